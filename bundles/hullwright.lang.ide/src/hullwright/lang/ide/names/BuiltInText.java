/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.names;

import hullwright.lang.imports.BuiltInCatalogs;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import org.apache.log4j.Logger;
import org.eclipse.emf.common.util.URI;

/**
 * Copies of the built-in catalogs for reading, since an editor can only open a file.
 */
final class BuiltInText {

	private static final Logger LOG = Logger.getLogger(BuiltInText.class);

	private BuiltInText() {
	}

	/** The URI of a copy that is up to date and cannot be written to; that of the catalog itself if no copy can be made. */
	static String of(URI catalog, Path folder) {
		Path copy = folder.resolve(catalog.lastSegment());
		try (InputStream text = BuiltInCatalogs.open(catalog)) {
			byte[] bytes = text.readAllBytes();
			if (!Files.exists(copy) || !Arrays.equals(bytes, Files.readAllBytes(copy))) {
				Files.createDirectories(folder);
				Path fresh = Files.createTempFile(folder, "catalog", ".new");
				Files.write(fresh, bytes);
				fresh.toFile().setReadOnly();
				Files.move(fresh, copy, StandardCopyOption.REPLACE_EXISTING);
			}
			return copy.toUri().toString();
		} catch (IOException e) {
			LOG.warn("The catalog " + catalog + " cannot be copied to " + folder + " for reading.", e);
			return catalog.toString();
		}
	}
}

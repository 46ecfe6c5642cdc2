/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.Collections;
import java.util.List;
import java.util.jar.Manifest;
import org.eclipse.core.runtime.ContributorFactorySimple;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.RegistryFactory;
import org.eclipse.core.runtime.spi.RegistryStrategy;

/**
 * The extension registry: inside OSGi the platform's, on a plain class path one that is filled from the same plugin.xml
 * files. Either way a rule is contributed, found and made in the same manner.
 */
final class Contributions {

	private Contributions() {
	}

	static IExtensionRegistry registry() {
		IExtensionRegistry platform = RegistryFactory.getRegistry();
		return platform != null ? platform : onClassPath(Contributions.class.getClassLoader());
	}

	private static IExtensionRegistry onClassPath(ClassLoader loader) {
		try {
			Object token = new Object();
			IExtensionRegistry registry = RegistryFactory.createRegistry(new RegistryStrategy(null, null), token, token);
			List<URL> descriptors = Collections.list(loader.getResources("plugin.xml"));
			for (URL descriptor : descriptors) {
				String name = bundleName(descriptor);
				try (InputStream content = descriptor.openStream()) {
					registry.addContribution(content, ContributorFactorySimple.createContributor(name), false, name, null, token);
				}
			}
			return registry;
		} catch (IOException e) {
			throw new IllegalStateException("the rules on the class path cannot be read: " + e.getMessage(), e);
		}
	}

	private static String bundleName(URL descriptor) throws IOException {
		URL manifest = new URL(descriptor, "META-INF/MANIFEST.MF");
		try (InputStream content = manifest.openStream()) {
			String name = new Manifest(content).getMainAttributes().getValue("Bundle-SymbolicName");
			return name == null ? descriptor.toString() : name.split(";")[0].strip();
		} catch (IOException e) {
			return descriptor.toString();
		}
	}
}

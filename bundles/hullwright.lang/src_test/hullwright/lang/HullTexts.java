/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import com.google.inject.Injector;
import hullwright.lang.imports.BuiltInCatalogs;
import hullwright.spec.SpecFile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.CheckMode;
import org.eclipse.xtext.validation.IResourceValidator;
import org.eclipse.xtext.validation.Issue;

/**
 * Reads .hull texts as the program does and says what is wrong with them. One instance is one project: what it has read
 * once, such as the standard catalog, it does not read again.
 */
final class HullTexts {

	/** The examples that ship, as they lie in the source tree. */
	static final Path EXAMPLES = Path.of("../hullwright.examples/examples");

	private static final Injector LANGUAGE = new HullStandaloneSetup().createInjectorAndDoEMFRegistration();

	private final XtextResourceSet project = LANGUAGE.getInstance(XtextResourceSet.class);

	/** Every shipped .hull file that is meant to be understood: the standard catalogs and the examples, but for the slips in texts. */
	static Stream<Path> shipped() {
		return Stream.of(Path.of("../hullwright.parts/src/standard"), EXAMPLES).flatMap(HullTexts::hullFilesIn)
				.filter(file -> !file.startsWith(EXAMPLES.resolve("faulty-text")));
	}

	private static Stream<Path> hullFilesIn(Path folder) {
		try (Stream<Path> files = Files.walk(folder)) {
			return files.filter(file -> file.toString().endsWith(".hull")).sorted().toList().stream();
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	static <T> T service(Class<T> type) {
		return LANGUAGE.getInstance(type);
	}

	/** Reads a file where it lies, so that its imports are found. */
	XtextResource read(Path file) {
		return (XtextResource) project.getResource(URI.createFileURI(file.toAbsolutePath().normalize().toString()), true);
	}

	/** A catalog that ships with the program, by the name that an import gives it. */
	XtextResource builtIn(String name) {
		return (XtextResource) project.getResource(BuiltInCatalogs.uriOf(name), true);
	}

	XtextResource read(String text) {
		return read(text.getBytes(StandardCharsets.UTF_8), URI.createURI("memory:/text.hull"));
	}

	/** Reads bytes as if they lay at a place; a file read from there before is forgotten. */
	XtextResource read(byte[] bytes, URI place) {
		project.getResources().removeIf(known -> known.getURI().equals(place));
		XtextResource resource = (XtextResource) project.createResource(place);
		try {
			resource.load(new ByteArrayInputStream(bytes), Map.of());
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
		return resource;
	}

	/** The problems of a text as editor and command line see them, in the order of the text. */
	static List<Issue> problems(XtextResource resource) {
		return service(IResourceValidator.class).validate(resource, CheckMode.ALL, CancelIndicator.NullImpl).stream()
				.sorted((a, b) -> Integer.compare(a.getOffset(), b.getOffset()))
				.toList();
	}

	/** The problems of a text, one a line, as {@code line: message}. */
	static List<String> describe(List<Issue> problems) {
		return problems.stream().map(problem -> problem.getLineNumber() + ": " + problem.getMessage()).toList();
	}

	/** What a text without syntax errors says. */
	static SpecFile spec(XtextResource resource) {
		return (SpecFile) resource.getContents().get(0);
	}
}

/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.catalog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.inject.Injector;
import hullwright.lang.HullLanguage;
import hullwright.lang.imports.BuiltInCatalogs;
import hullwright.spec.Catalog;
import hullwright.spec.PartType;
import hullwright.spec.SpecFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.CheckMode;
import org.eclipse.xtext.validation.IResourceValidator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Finds where each part of the standard catalogs is fitted: in an example, in a page, in a test or, if no boat needs it, in
 * one of the trial boats beside this test. A part that nobody fits is one that nobody has tried.
 */
class PartsInUseTest {

	/** Parts that no text can fit yet, and why. */
	private static final Map<String, String> NOT_YET_FITTED = Map.of(
			"microPinCap", "closes an unused port of a device, which a text cannot name",
			"miniPinCap", "closes an unused port of a device, which a text cannot name",
			"pushPinCap", "closes an unused port of a device, which a text cannot name",
			"bayonetPinCap", "closes an unused port of a device, which a text cannot name");

	/** Where a part stands in a text: behind the word that joins it. A piece of a text that is no whole file is not linked. */
	private static final Pattern FITTED = Pattern.compile("(?::|\\bof|\\bwith|\\bvia|,)\\s+(?:Standard(?:Serial)?\\.)?([a-zA-Z][a-zA-Z0-9]*)\\b");

	private static final Path BUNDLES = Path.of("..");
	private static final Injector LANGUAGE = HullLanguage.services();

	private final XtextResourceSet texts = LANGUAGE.getInstance(XtextResourceSet.class);

	static Stream<Path> trialBoats() throws IOException {
		return files(Path.of("src_test/hullwright/tests/catalog"), ".hull");
	}

	@ParameterizedTest
	@MethodSource("trialBoats")
	void aTrialBoatIsReadAndLinkedWithoutAProblem(Path file) {
		assertEquals(List.of(), LANGUAGE.getInstance(IResourceValidator.class).validate(read(file), CheckMode.ALL, CancelIndicator.NullImpl).stream()
				.map(problem -> problem.getLineNumber() + ": " + problem.getMessage()).toList());
	}

	@Test
	void everyPartIsFittedSomewhere(TestReporter report) throws IOException {
		Map<String, TreeSet<String>> places = new TreeMap<>();
		Stream.of("parts", "serial").flatMap(this::parts).forEach(part -> places.put(part, new TreeSet<>()));
		assertTrue(places.size() > 100, places.size() + " parts were read");
		for (Path file : files(BUNDLES, ".hull").toList()) {
			linked(read(file)).forEach(part -> places.get(part).add(file.getFileName().toString()));
		}
		for (Path file : Stream.concat(files(BUNDLES, ".md"), files(BUNDLES, "Test.java")).toList()) {
			FITTED.matcher(Files.readString(file)).results().map(match -> match.group(1)).filter(places::containsKey)
					.forEach(part -> places.get(part).add(file.getFileName().toString()));
		}
		places.forEach((part, where) -> report.publishEntry(part, where.isEmpty() ? "nowhere" : String.join(" ", where)));
		assertEquals(new TreeSet<>(NOT_YET_FITTED.keySet()), places.entrySet().stream().filter(place -> place.getValue().isEmpty())
				.map(Map.Entry::getKey).collect(Collectors.toCollection(TreeSet::new)));
	}

	private Stream<String> parts(String catalog) {
		Resource file = texts.getResource(BuiltInCatalogs.uriOf(catalog), true);
		return ((Catalog) ((SpecFile) file.getContents().get(0)).getDeclarations().get(0)).getParts().stream().map(PartType::getName);
	}

	/** The standard parts that a text names, but for those that the standard catalogs name themselves. */
	private static Stream<String> linked(Resource text) {
		return EcoreUtil.ExternalCrossReferencer.find(text).keySet().stream()
				.filter(PartType.class::isInstance)
				// a name that means nothing, as in the texts that show slips, stays a promise without a file
				.filter(part -> part.eResource() != null)
				.filter(part -> BuiltInCatalogs.isBuiltIn(part.eResource().getURI()))
				.map(PartType.class::cast).map(PartType::getName);
	}

	private Resource read(Path file) {
		Resource resource = texts.getResource(URI.createFileURI(file.toAbsolutePath().normalize().toString()), true);
		EcoreUtil.resolveAll(resource);
		return resource;
	}

	/** The texts of the source tree, without the catalogs themselves and what a build has made. */
	private static Stream<Path> files(Path folder, String ending) throws IOException {
		try (Stream<Path> files = Files.walk(folder)) {
			return files.filter(file -> file.toString().endsWith(ending))
					.filter(file -> Stream.of("target", "bin", "standard").noneMatch(left -> StreamSupport.stream(file.spliterator(), false)
							.anyMatch(step -> step.toString().equals(left))))
					.sorted().toList().stream();
		}
	}
}

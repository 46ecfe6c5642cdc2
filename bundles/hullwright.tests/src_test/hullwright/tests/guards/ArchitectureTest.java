/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.guards;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import hullwright.rules.Rule;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Guards the invariants of the design on the bytecode: which bundle may know which, and what is absent where.
 */
class ArchitectureTest {

	private static JavaClasses code;

	@BeforeAll
	static void readBytecode() {
		code = new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS).importPackages("hullwright");
		Stream.of("hullwright.quantity", "hullwright.network", "hullwright.analysis", "hullwright.spec", "hullwright.lang", "hullwright.resolve",
				"hullwright.rules", "hullwright.rules.cabling", "hullwright.rules.connectors", "hullwright.rules.data", "hullwright.rules.power", "hullwright.rules.series",
				"hullwright.check", "hullwright.report", "hullwright.documents", "hullwright.cli", "hullwright.testkit")
				.forEach(bundle -> assertTrue(code.containPackage(bundle), "no classes of " + bundle + " to guard"));
	}

	/** One line a bundle: what of ours, and what of others, it may know. The JDK is open to all but the rules. */
	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			hullwright.quantity..      |                                                                    |
			hullwright.network..       | hullwright.quantity..                                              |
			hullwright.analysis..      | hullwright.quantity.. hullwright.network..                         | org.ejml..
			hullwright.spec..          | hullwright.quantity..                                              | org.eclipse.emf..
			hullwright.lang..          | hullwright.quantity.. hullwright.spec..                            | org.eclipse.emf.. org.eclipse.xtext.. org.antlr.. com.google.inject.. com.google.common.. jakarta.inject.. org.apache.log4j.. org.osgi.framework.. org.eclipse.lsp4j..
			hullwright.resolve..       | hullwright.quantity.. hullwright.spec.. hullwright.network..       | org.eclipse.emf..
			hullwright.rules           | hullwright.quantity.. hullwright.network.. hullwright.analysis.. hullwright.rules.. |
			hullwright.rules.edit      | hullwright.quantity.. hullwright.network.. hullwright.analysis.. hullwright.rules.. |
			hullwright.rules.report    | hullwright.quantity.. hullwright.network.. hullwright.analysis.. hullwright.rules.. |
			hullwright.rules.cabling.. | hullwright.quantity.. hullwright.network.. hullwright.analysis.. hullwright.rules hullwright.rules.edit |
			hullwright.rules.connectors.. | hullwright.quantity.. hullwright.network.. hullwright.analysis.. hullwright.rules hullwright.rules.edit |
			hullwright.rules.data..     | hullwright.quantity.. hullwright.network.. hullwright.analysis.. hullwright.rules hullwright.rules.edit |
			hullwright.rules.power..    | hullwright.quantity.. hullwright.network.. hullwright.analysis.. hullwright.rules hullwright.rules.edit |
			hullwright.rules.series..   | hullwright.quantity.. hullwright.network.. hullwright.analysis.. hullwright.rules hullwright.rules.edit |
			hullwright.check..         | hullwright.quantity.. hullwright.spec.. hullwright.lang.. hullwright.network.. hullwright.analysis.. hullwright.resolve.. hullwright.rules hullwright.rules.edit hullwright.rules.report | org.eclipse.emf.. org.eclipse.xtext.. org.eclipse.core.runtime.. org.eclipse.osgi.util.. org.osgi.framework.. com.google.inject.. com.google.gson.. org.w3c.dom.. org.xml.sax..
			hullwright.report..        | hullwright.quantity.. hullwright.network.. hullwright.analysis.. hullwright.rules hullwright.rules.edit hullwright.rules.report | com.google.gson..
			hullwright.documents..     | hullwright.quantity.. hullwright.network.. hullwright.analysis.. hullwright.rules | org.apache.pdfbox..
			hullwright.cli..           | hullwright.quantity.. hullwright.network.. hullwright.analysis hullwright.documents.. hullwright.check.. hullwright.lang.ide hullwright.report.. hullwright.rules hullwright.rules.edit hullwright.rules.report | picocli.. org.eclipse.equinox.app.. org.apache.log4j..
			""")
	void aBundleKnowsOnlyWhatItMay(String bundle, String ours, String others) {
		String allowed = bundle + " java.. javax.xml.." + (ours == null ? "" : " " + ours) + (others == null ? "" : " " + others);
		classes().that().resideInAPackage(bundle)
				.and(not(resideInAnyPackage("hullwright.lang.ide..")))
				.should().onlyDependOnClassesThat().resideInAnyPackage(allowed.trim().split(" +"))
				.check(code);
	}

	@Test
	void onlyLanguageAndEngineKnowXtext() {
		noClasses().that().resideOutsideOfPackages("hullwright.lang..", "hullwright.check..")
				.should().dependOnClassesThat().resideInAPackage("org.eclipse.xtext..").check(code);
	}

	@Test
	void theFaceOfTheEngineShowsNeitherXtextNorEmf() {
		methods().that().areDeclaredInClassesThat().resideInAPackage("hullwright.check..")
				.and().areDeclaredInClassesThat().arePublic()
				.and().arePublic()
				.should().notHaveRawReturnType(resideInAnyPackage("org.eclipse..", "hullwright.spec..", "hullwright.lang.."))
				.andShould().notHaveRawParameterTypes(com.tngtech.archunit.base.DescribedPredicate.anyElementThat(
						resideInAnyPackage("org.eclipse..", "hullwright.spec..", "hullwright.lang..")))
				.check(code);
	}

	@Test
	void nothingHeadlessKnowsTheWindow() {
		noClasses().that().resideOutsideOfPackage("hullwright.workbench..")
				.should().dependOnClassesThat().resideInAnyPackage("org.eclipse.swt..", "org.eclipse.ui..", "org.eclipse.jface..").check(code);
	}

	@Test
	void rulesDoNoInputOrOutputAndReadNoClock() {
		noClasses().that().resideInAPackage("hullwright.rules.*..").and().areAssignableTo(Rule.class)
				.should().dependOnClassesThat().resideInAnyPackage("java.io..", "java.nio..", "java.net..", "java.time..", "java.util.concurrent..")
				.orShould().dependOnClassesThat().haveFullyQualifiedName(System.class.getName())
				.orShould().dependOnClassesThat().haveFullyQualifiedName(Thread.class.getName())
				.check(code);
	}

	@Test
	void rulesKeepNoState() {
		fields().that().areDeclaredInClassesThat().areAssignableTo(Rule.class)
				.and().areDeclaredInClassesThat().resideOutsideOfPackage("hullwright.testkit..")
				.and().haveNameNotStartingWith("$SWITCH_TABLE$").should().beStatic().andShould().beFinal().check(code);
	}

	/**
	 * What others see does not change. The kernel that solves circuits fills arrays and keeps the order that it found; the tables
	 * that a compiler makes for a switch are no fields of ours.
	 */
	@Test
	void networkAndResultsAreImmutable() {
		fields().that().areDeclaredInClassesThat().resideInAnyPackage("hullwright.network..", "hullwright.quantity..", "hullwright.analysis.*..")
				.and().areDeclaredInClassesThat().arePublic()
				.and().areDeclaredInClassesThat().resideOutsideOfPackage("hullwright.analysis.circuit")
				.and().doNotHaveModifier(JavaModifier.SYNTHETIC)
				.should().beFinal().check(code);
	}
}

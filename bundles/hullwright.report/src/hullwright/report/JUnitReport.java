/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

import com.google.gson.JsonElement;
import hullwright.network.Origin;
import hullwright.rules.Finding;
import hullwright.rules.Severity;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.ReportedFinding;
import hullwright.rules.report.RuleRun;
import hullwright.rules.report.SetAside;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Reports as the XML of test results that build servers read, after the schema that is in wide use for it: a suite for each project,
 * a case for each rule. Errors and warnings fail their case, all of a rule in one failure, since readers take the first of a case;
 * advice and what does not count is told beside it. How many findings there are stands in the properties of the suite.
 */
public final class JUnitReport {

	private final XMLStreamWriter xml;

	private JUnitReport(XMLStreamWriter xml) {
		this.xml = xml;
	}

	/** Writes the reports on several projects as one document. */
	public static String of(List<ProjectReport> projects) {
		StringWriter text = new StringWriter();
		try {
			XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
			new JUnitReport(xml).write(projects);
			xml.close();
		} catch (XMLStreamException e) {
			throw new IllegalStateException("text can always be written", e);
		}
		return text + "\n";
	}

	private void write(List<ProjectReport> projects) throws XMLStreamException {
		xml.writeStartDocument("UTF-8", "1.0");
		line(0);
		xml.writeStartElement("testsuites");
		attribute("name", "Hullwright");
		attributes(projects.stream().map(each -> Outcomes.of(each.report())).reduce(new Outcomes(0, 0, 0, 0), Outcomes::plus));
		for (ProjectReport each : projects) {
			suite(each);
		}
		line(0);
		xml.writeEndElement();
		xml.writeEndDocument();
	}

	/** What became of one rule, and what it found. */
	private record Case(String rule, RuleRun.State state, String reason, List<ReportedFinding> findings, List<SetAside> setAside) {

		List<ReportedFinding> failures() {
			return findings.stream().filter(each -> each.finding().severity() != Severity.ADVICE).toList();
		}

		List<ReportedFinding> advice() {
			return findings.stream().filter(each -> each.finding().severity() == Severity.ADVICE).toList();
		}

		boolean isFailure() {
			return state == RuleRun.State.RUN && !failures().isEmpty();
		}
	}

	/** A case for each rule, and one for each kind of problem of texts and projects that was found, which no rule finds. */
	private static List<Case> cases(CheckReport report) {
		Map<String, Case> byRule = new LinkedHashMap<>();
		report.rules().forEach(each -> byRule.put(each.rule(),
				new Case(each.rule(), each.state(), each.reason().orElse(""), new ArrayList<>(), new ArrayList<>())));
		report.findings().forEach(each -> of(each, byRule).findings().add(each));
		report.setAside().forEach(each -> of(each.finding(), byRule).setAside().add(each));
		return List.copyOf(byRule.values());
	}

	private static Case of(ReportedFinding reported, Map<String, Case> byRule) {
		return byRule.computeIfAbsent(reported.finding().rule(), rule -> new Case(rule, RuleRun.State.RUN, "", new ArrayList<>(), new ArrayList<>()));
	}

	/** How many cases there are, and how many of each outcome, as both levels state it. */
	private record Outcomes(int tests, long failures, long errors, long skipped) {

		static Outcomes of(CheckReport report) {
			List<Case> cases = cases(report);
			int gaps = report.gaps().isEmpty() ? 0 : 1;
			return new Outcomes(cases.size() + gaps, cases.stream().filter(Case::isFailure).count(),
					cases.stream().filter(each -> each.state == RuleRun.State.FAILED).count() + gaps,
					cases.stream().filter(each -> each.state == RuleRun.State.OFF).count());
		}

		Outcomes plus(Outcomes other) {
			return new Outcomes(tests + other.tests, failures + other.failures, errors + other.errors, skipped + other.skipped);
		}
	}

	private void attributes(Outcomes outcomes) throws XMLStreamException {
		attribute("tests", String.valueOf(outcomes.tests));
		attribute("failures", String.valueOf(outcomes.failures));
		attribute("errors", String.valueOf(outcomes.errors));
		attribute("skipped", String.valueOf(outcomes.skipped));
	}

	private void suite(ProjectReport project) throws XMLStreamException {
		CheckReport report = project.report();
		line(1);
		xml.writeStartElement("testsuite");
		attribute("name", project.name());
		attribute("timestamp", report.asOf() + "T00:00:00");
		attributes(Outcomes.of(report));
		properties(report);
		for (Case each : cases(report)) {
			testCase(project, each);
		}
		if (!report.gaps().isEmpty()) {
			line(2);
			xml.writeStartElement("testcase");
			attribute("classname", "hullwright");
			attribute("name", "everything was checked");
			problem("error", "not everything could be checked", String.join("\n", report.gaps()));
			line(2);
			xml.writeEndElement();
		}
		line(1);
		xml.writeEndElement();
	}

	private void properties(CheckReport report) throws XMLStreamException {
		line(2);
		xml.writeStartElement("properties");
		property("severities", "advice, warning, error; advice does not fail");
		for (Map.Entry<String, JsonElement> count : JsonReport.counts(report).entrySet()) {
			property("count " + count.getKey(), count.getValue().getAsString());
		}
		property("rules", TextReport.rules(report));
		for (var file : report.files()) {
			property("file " + file.file(), file.role() + ", sha-256 " + file.sha256());
		}
		if (report.baseline().isPresent()) {
			property("baseline " + report.baseline().get().file(), "sha-256 " + report.baseline().get().sha256());
		}
		line(2);
		xml.writeEndElement();
	}

	private void property(String name, String value) throws XMLStreamException {
		line(3);
		xml.writeEmptyElement("property");
		attribute("name", name);
		attribute("value", value);
	}

	private void testCase(ProjectReport project, Case tested) throws XMLStreamException {
		line(2);
		xml.writeStartElement("testcase");
		attribute("classname", "hullwright." + tested.rule.substring(0, Math.max(0, tested.rule.indexOf('/'))));
		attribute("name", tested.rule);
		if (tested.state == RuleRun.State.OFF) {
			line(3);
			xml.writeEmptyElement("skipped");
			attribute("message", "switched off by the profile");
		} else if (tested.state == RuleRun.State.FAILED) {
			// what it had found before counts all the same, and a case has one outcome
			problem("error", "the rule failed and is off", tested.reason + tested.failures().stream().map(each -> "\n" + told(project, each)).collect(Collectors.joining()));
		} else if (tested.isFailure()) {
			List<ReportedFinding> failures = tested.failures();
			problem("failure", failures.size() == 1 ? failures.get(0).finding().message() : failures.size() + " findings",
					failures.stream().map(each -> told(project, each)).collect(Collectors.joining("\n")));
		}
		List<String> beside = new ArrayList<>();
		tested.advice().forEach(each -> beside.add(told(project, each)));
		tested.setAside().forEach(each -> beside.add("not counted, " + SetAsideText.of(each.why()) + ": " + told(project, each.finding())));
		if (!beside.isEmpty()) {
			line(3);
			xml.writeStartElement("system-out");
			xml.writeCharacters(clean(String.join("\n", beside)));
			xml.writeEndElement();
		}
		line(2);
		xml.writeEndElement();
	}

	private static String told(ProjectReport project, ReportedFinding reported) {
		Finding finding = reported.finding();
		Origin origin = finding.origin();
		String place = origin.file().isEmpty() ? "" : project.placeOf(origin) + ": ";
		String boats = OccurrenceText.of(reported.occurrence());
		return place + finding.severity().word() + ": " + finding.message() + (boats.isEmpty() ? "" : " (" + boats + ")")
				+ (finding.element().equals(origin.file()) ? "" : ", element " + finding.element())
				+ (finding.source().isEmpty() ? "" : "; source: " + finding.source());
	}

	private void problem(String element, String message, String detail) throws XMLStreamException {
		line(3);
		xml.writeStartElement(element);
		attribute("message", message);
		xml.writeCharacters(clean(detail));
		xml.writeEndElement();
	}

	private void attribute(String name, String value) throws XMLStreamException {
		xml.writeAttribute(name, clean(value));
	}

	/** Text without the characters that XML 1.0 cannot hold. */
	private static String clean(String text) {
		return text.replaceAll("[^\\t\\n\\r\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]", "\uFFFD");
	}

	private void line(int depth) throws XMLStreamException {
		xml.writeCharacters("\n" + "  ".repeat(depth));
	}
}

/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

import hullwright.rules.Finding;
import hullwright.rules.Severity;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.ReportedFinding;
import hullwright.rules.report.RuleRun;
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
 * Reports as the XML of test results that build servers read: a suite for each project, a case for each rule. Errors and warnings
 * fail their case, advice is told beside it.
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
		xml.writeAttribute("name", "Hullwright");
		for (ProjectReport each : projects) {
			suite(each);
		}
		line(0);
		xml.writeEndElement();
		xml.writeEndDocument();
	}

	/** Findings of one rule. */
	private record Case(String rule, List<ReportedFinding> findings, RuleRun.State state, String reason) {

		List<ReportedFinding> failures() {
			return findings.stream().filter(each -> each.finding().severity() != Severity.ADVICE).toList();
		}

		List<ReportedFinding> advice() {
			return findings.stream().filter(each -> each.finding().severity() == Severity.ADVICE).toList();
		}
	}

	private static List<Case> cases(CheckReport report) {
		Map<String, List<ReportedFinding>> byRule = new LinkedHashMap<>();
		report.rules().forEach(each -> byRule.put(each.rule(), new ArrayList<>()));
		report.findings().forEach(each -> byRule.computeIfAbsent(each.finding().rule(), none -> new ArrayList<>()).add(each));
		Map<String, RuleRun> runs = report.rules().stream().collect(Collectors.toMap(RuleRun::rule, each -> each));
		return byRule.entrySet().stream().map(each -> new Case(each.getKey(), each.getValue(),
				runs.containsKey(each.getKey()) ? runs.get(each.getKey()).state() : RuleRun.State.RUN,
				runs.containsKey(each.getKey()) ? runs.get(each.getKey()).reason().orElse("") : "")).toList();
	}

	private void suite(ProjectReport project) throws XMLStreamException {
		CheckReport report = project.report();
		List<Case> cases = cases(report);
		int gaps = report.gaps().isEmpty() ? 0 : 1;
		line(1);
		xml.writeStartElement("testsuite");
		attribute("name", project.name());
		attribute("timestamp", report.asOf() + "T00:00:00");
		attribute("tests", String.valueOf(cases.size() + gaps));
		attribute("failures", String.valueOf(cases.stream().filter(each -> each.state != RuleRun.State.FAILED && !each.failures().isEmpty()).count()));
		attribute("errors", String.valueOf(cases.stream().filter(each -> each.state == RuleRun.State.FAILED).count() + gaps));
		attribute("skipped", String.valueOf(cases.stream().filter(each -> each.state == RuleRun.State.OFF).count()));
		properties(report);
		for (Case each : cases) {
			testCase(project, each);
		}
		if (gaps > 0) {
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
		String counts = TextReport.counts(report);
		property("findings", counts.isEmpty() ? "none" : counts);
		String aside = TextReport.setAside(report);
		property("not counted", aside.isEmpty() ? "none" : aside);
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
			problem("error", "the rule failed and is off", tested.reason);
		} else if (!tested.failures().isEmpty()) {
			List<ReportedFinding> failures = tested.failures();
			problem("failure", failures.size() == 1 ? failures.get(0).finding().message() : failures.size() + " findings", told(project, failures));
		}
		if (!tested.advice().isEmpty()) {
			line(3);
			xml.writeStartElement("system-out");
			xml.writeCharacters(clean(told(project, tested.advice())));
			xml.writeEndElement();
		}
		line(2);
		xml.writeEndElement();
	}

	private static String told(ProjectReport project, List<ReportedFinding> findings) {
		return findings.stream().map(each -> {
			Finding finding = each.finding();
			String boats = OccurrenceText.of(each.occurrence());
			String place = finding.origin().file().isEmpty() ? "" : project.pathOf(finding.origin().file())
					+ (finding.origin().line() == 0 ? "" : ":" + finding.origin().line() + ":" + finding.origin().column()) + ": ";
			return place + finding.severity().word() + ": " + finding.message() + (boats.isEmpty() ? "" : " (" + boats + ")") + ", element " + finding.element();
		}).collect(Collectors.joining("\n"));
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

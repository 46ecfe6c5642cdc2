/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import hullwright.check.CheckRequest;
import hullwright.network.Origin;
import hullwright.report.OccurrenceText;
import hullwright.rules.Finding;
import hullwright.rules.Severity;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.ReportedFinding;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;

/**
 * The latest check of a project.
 *
 * @param number of one check, or of several that found the same, so that a diagnostic can say which check it came from
 * @param folder the project's folder
 * @param request what was checked, or is under way
 * @param report what was found
 * @param soFar whether only the boat in view is done, and all others are under way
 */
record CheckedProject(long number, Path folder, CheckRequest request, CheckReport report, boolean soFar) {

	private static final String BOAT_IN_VIEW = "the boat in view, others are being checked";

	/** What {@link HullServer#mayBeMended} looks for. */
	static final String FIXABLE = ":fixable";

	/** What stands before the element, and then before the boats, that {@link HullServer} tells of a diagnostic. */
	static final String ELEMENT = " of ";
	static final String BOATS = " on ";

	/** One list for each file that has something to say, in the order of the findings; under the folder what is about no file. */
	Map<Path, List<Diagnostic>> diagnostics() {
		Map<Path, List<Diagnostic>> byFile = new LinkedHashMap<>();
		for (int i = 0; i < report.findings().size(); i++) {
			ReportedFinding reported = report.findings().get(i);
			byFile.computeIfAbsent(place(reported.finding().origin()), key -> new ArrayList<>()).add(diagnostic(reported, i));
		}
		for (String gap : report.gaps()) {
			byFile.computeIfAbsent(folder, key -> new ArrayList<>()).add(notChecked(gap));
		}
		return byFile;
	}

	/** A finding in a file that is not in the project, such as a built-in catalog, belongs to the project as a whole. */
	private Path place(Origin origin) {
		boolean inProject = request.snapshot().files().containsKey(origin.file())
				|| request.snapshot().plugins().stream().anyMatch(plugin -> plugin.file().equals(origin.file()));
		return inProject ? folder.resolve(origin.file()) : folder;
	}

	private Diagnostic diagnostic(ReportedFinding reported, int index) {
		Finding finding = reported.finding();
		String boats = OccurrenceText.of(reported.occurrence());
		String message = boats.isEmpty() ? finding.message() : finding.message() + " (" + boats + ")";
		Diagnostic diagnostic = new Diagnostic(range(finding.origin()), message, severity(finding.severity()), HullServer.SOURCE,
				finding.rule());
		String occurs = soFar ? BOAT_IN_VIEW : boats.isEmpty() ? HullServer.EVERY_BOAT : boats;
		diagnostic.setData(number + ":" + index + (finding.fixes().isEmpty() ? "" : FIXABLE) + ELEMENT + finding.element()
				+ (reported.occurrence().series().isEmpty() ? "" : BOATS + occurs));
		return diagnostic;
	}

	private Range range(Origin origin) {
		return Places.range(request.snapshot().text(origin.file()).orElse(""), origin.offset(), origin.length());
	}

	private static Diagnostic notChecked(String gap) {
		Position start = new Position(0, 0);
		Diagnostic diagnostic = new Diagnostic(new Range(start, start), "Not checked: " + gap);
		diagnostic.setSeverity(DiagnosticSeverity.Information);
		diagnostic.setSource(HullServer.SOURCE);
		return diagnostic;
	}

	private static DiagnosticSeverity severity(Severity severity) {
		return switch (severity) {
			case ERROR -> DiagnosticSeverity.Error;
			case WARNING -> DiagnosticSeverity.Warning;
			case ADVICE -> DiagnosticSeverity.Information;
		};
	}
}

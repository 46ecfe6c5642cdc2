/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.export;

import hullwright.report.JUnitReport;
import hullwright.report.JsonReport;
import hullwright.report.MarkdownReport;
import hullwright.report.ProjectReport;
import hullwright.report.ProjectSources;
import hullwright.report.SarifReport;
import hullwright.report.TextDetail;
import hullwright.report.TextReport;
import hullwright.check.Snapshot;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.core.runtime.Platform;

/**
 * A form in which a report can be handed on.
 */
enum ReportForm {
	MARKDOWN("Markdown, for reviews", "md"),
	TEXT("Text", "txt"),
	JSON("JSON, for programs", "json"),
	SARIF("SARIF, for code hosts", "sarif"),
	JUNIT("Test results, for build servers", "xml");

	private final String label;
	private final String extension;

	ReportForm(String label, String extension) {
		this.label = label;
		this.extension = extension;
	}

	String label() {
		return label;
	}

	String extension() {
		return extension;
	}

	/** Writes a report in this form. */
	String written(ProjectReport report, Snapshot checked) {
		List<ProjectReport> all = List.of(report);
		return switch (this) {
			case MARKDOWN -> MarkdownReport.of(all);
			case TEXT -> TextReport.of(all, false, Set.of(TextDetail.SET_ASIDE, TextDetail.FILES));
			case JSON -> JsonReport.of(all);
			case SARIF -> SarifReport.of(all, version(), Map.of(report.project(), sources(report, checked)));
			case JUNIT -> JUnitReport.of(all);
		};
	}

	private static ProjectSources sources(ProjectReport report, Snapshot checked) {
		Map<String, String> texts = new HashMap<>();
		checked.files().keySet().forEach(file -> checked.text(file).ifPresent(text -> texts.put(file, text)));
		return new ProjectSources("", texts);
	}

	private static String version() {
		var version = Platform.getBundle("hullwright.workbench").getVersion();
		return version.getMajor() + "." + version.getMinor() + "." + version.getMicro();
	}
}

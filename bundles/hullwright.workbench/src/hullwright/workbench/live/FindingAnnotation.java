/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import hullwright.lang.ide.HullServer;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Pattern;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticSeverity;

/**
 * A finding as an open editor shows it.
 */
public final class FindingAnnotation extends Annotation {

	/** Types declared in plugin.xml; each looks like the platform's own of the same severity. */
	private static final String ERROR = "hullwright.workbench.finding.error";
	private static final String WARNING = "hullwright.workbench.finding.warning";
	private static final String ADVICE = "hullwright.workbench.finding.advice";

	/** As many words as go into a line. */
	private static final Pattern LONG_LINE = Pattern.compile("(.{1,100})(?:\\s+|$)");

	private final LanguageService service;
	private final Path file;
	private final Diagnostic diagnostic;
	private CompletableFuture<List<CodeAction>> fixes;

	FindingAnnotation(LanguageService service, Path file, Diagnostic diagnostic) {
		super(type(diagnostic.getSeverity()), false, inLines(FindingMarkers.message(diagnostic)));
		this.service = service;
		this.file = file;
		this.diagnostic = diagnostic;
	}

	/** The platform's hover shows long lines cut off, so they are broken here. */
	private static String inLines(String message) {
		return LONG_LINE.matcher(message).replaceAll("$1\n").stripTrailing();
	}

	private static String type(DiagnosticSeverity severity) {
		if (severity == DiagnosticSeverity.Error) {
			return ERROR;
		}
		return severity == DiagnosticSeverity.Warning ? WARNING : ADVICE;
	}

	/** The id of the rule that found it. */
	public String rule() {
		return FindingMarkers.rule(diagnostic);
	}

	/** Ways to mend it, worked out once, in the background, from the first call on. */
	public synchronized CompletableFuture<List<CodeAction>> fixes() {
		if (fixes == null) {
			fixes = HullServer.mayBeMended(diagnostic) ? service.fixes(file, diagnostic) : CompletableFuture.completedFuture(List.of());
		}
		return fixes;
	}
}

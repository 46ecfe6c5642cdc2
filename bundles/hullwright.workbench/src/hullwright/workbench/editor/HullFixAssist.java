/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.editor;

import hullwright.workbench.live.FindingAnnotation;
import hullwright.workbench.live.FixEdit;
import hullwright.workbench.live.LanguageService;
import hullwright.workbench.live.UiThread;
import hullwright.workbench.rulepage.ExplainProposal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextOperationTarget;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.contentassist.IContextInformation;
import org.eclipse.jface.text.quickassist.IQuickAssistInvocationContext;
import org.eclipse.jface.text.quickassist.IQuickAssistProcessor;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.statushandlers.StatusManager;

/**
 * Ways to mend the finding at the caret, or else on the caret's line.
 */
public final class HullFixAssist implements IQuickAssistProcessor {

	/** What is there by then is shown at once, and the window does not notice it. Else the list opens when the fixes are there. */
	private static final Duration PATIENCE = Duration.ofMillis(40);

	private String message;

	@Override
	public ICompletionProposal[] computeQuickAssistProposals(IQuickAssistInvocationContext context) {
		List<ICompletionProposal> proposals = new ArrayList<>();
		List<FindingAnnotation> here = FindingsHere.at(context.getSourceViewer(), context.getOffset()).nearest();
		message = here.isEmpty() ? "Nothing was found on this line" : "No way to mend this is known; the text has to be changed by hand";
		CompletableFuture<Void> all = CompletableFuture.allOf(here.stream().map(FindingAnnotation::fixes).toArray(CompletableFuture[]::new));
		LanguageService.peek(all, PATIENCE);
		if (!all.isDone()) {
			// a part of the list would look as if nothing else were coming
			message = "Ways to mend this are being tried\u2026";
			all.whenComplete((done, failure) -> askAgain(context.getSourceViewer(), context.getOffset()));
			return null;
		}
		for (FindingAnnotation finding : here) {
			finding.fixes().getNow(List.of()).forEach(fix -> proposals.add(new FixProposal(fix, finding.getText())));
		}
		here.stream().filter(finding -> !finding.rule().isEmpty())
				.forEach(finding -> proposals.add(new ExplainProposal(finding.rule(), finding.getText())));
		return proposals.isEmpty() ? null : proposals.toArray(ICompletionProposal[]::new);
	}

	/** Opens the list unless somebody has gone on meanwhile. */
	private static void askAgain(ISourceViewer viewer, int offset) {
		UiThread.later(() -> {
			StyledText text = viewer.getTextWidget();
			if (text != null && !text.isDisposed() && text.isFocusControl() && holds(viewer.getSelectedRange(), offset)
					&& viewer instanceof ITextOperationTarget target && target.canDoOperation(ISourceViewer.QUICK_ASSIST)) {
				target.doOperation(ISourceViewer.QUICK_ASSIST);
			}
		});
	}

	private static boolean holds(Point selected, int offset) {
		return selected.x <= offset && offset <= selected.x + selected.y;
	}

	@Override
	public String getErrorMessage() {
		return message;
	}

	@Override
	public boolean canFix(Annotation annotation) {
		return annotation instanceof FindingAnnotation finding
				&& LanguageService.peek(finding.fixes(), Duration.ZERO).map(fixes -> !fixes.isEmpty()).orElse(true);
	}

	@Override
	public boolean canAssist(IQuickAssistInvocationContext context) {
		return false;
	}

	private static final class FixProposal implements ICompletionProposal {

		private final CodeAction fix;
		private final String finding;
		private final FixEdit edit;

		FixProposal(CodeAction fix, String finding) {
			this.fix = fix;
			this.finding = finding;
			this.edit = new FixEdit(fix);
		}

		@Override
		public void apply(IDocument document) {
			try {
				edit.make();
			} catch (CoreException e) {
				StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW);
			}
		}

		@Override
		public String getDisplayString() {
			return fix.getTitle();
		}

		@Override
		public String getAdditionalProposalInfo() {
			return InfoText.of(finding + "\n\n" + FixPreview.of(fix));
		}

		@Override
		public Point getSelection(IDocument document) {
			return edit.placeIn(document).map(place -> new Point(place.getOffset() + place.getLength(), 0)).orElse(null);
		}

		@Override
		public Image getImage() {
			return null;
		}

		@Override
		public IContextInformation getContextInformation() {
			return null;
		}
	}
}

/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.writing;

import java.util.Locale;
import java.util.Optional;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextInputListener;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/**
 * Texts that no check reads, which are shown but not changed: those above the size that a .hull file may have, and what is no
 * text at all.
 */
public final class ForReadingOnly {

	/** As many characters as a .hull file may have bytes. */
	private static final int LARGEST = 5_000_000;
	private static final int LOOKED_AT = 100_000;

	private Optional<String> reason = Optional.empty();

	private ForReadingOnly() {
	}

	/** Why a text is for reading only, in a sentence; empty if it may be changed. */
	public static Optional<String> reason(IDocument document) {
		if (document.getLength() > LARGEST) {
			return Optional.of(String.format(Locale.ROOT, "For reading only: the file has %.1f MB, and a .hull file may have %d MB",
					document.getLength() / 1e6, LARGEST / 1_000_000));
		}
		String start = document.get().substring(0, Math.min(LOOKED_AT, document.getLength()));
		return start.indexOf('\0') < 0 && start.indexOf('\ufffd') < 0 ? Optional.empty()
				: Optional.of("For reading only: the file is no text in UTF-8, and what cannot be shown would be lost");
	}

	/** Keeps keys from changing such a text, and says why. */
	public static void keep(ITextViewer viewer) {
		ForReadingOnly kept = new ForReadingOnly();
		kept.look(viewer, viewer.getDocument());
		viewer.addTextInputListener(new ITextInputListener() {
			@Override
			public void inputDocumentAboutToBeChanged(IDocument before, IDocument now) {
				// only the text that is shown then matters
			}

			@Override
			public void inputDocumentChanged(IDocument before, IDocument now) {
				kept.look(viewer, now);
			}
		});
		viewer.getTextWidget().addVerifyListener(event -> {
			if (kept.reason.isPresent()) {
				event.doit = false;
				refuse(kept.reason.get());
			}
		});
	}

	/** Looked at once for each text, since that copies it. */
	private void look(ITextViewer viewer, IDocument document) {
		// while the viewer takes in the text, keys are not refused
		reason = Optional.empty();
		Optional<String> found = document == null ? Optional.empty() : reason(document);
		found.ifPresent(sentence -> viewer.getTextWidget().getDisplay().asyncExec(() -> {
			reason = found;
			refuse(sentence);
		}));
	}

	private static void refuse(String sentence) {
		IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
		IEditorPart editor = window == null || window.getActivePage() == null ? null : window.getActivePage().getActiveEditor();
		if (editor != null) {
			StatusLine.refuse(editor, sentence);
		}
	}
}

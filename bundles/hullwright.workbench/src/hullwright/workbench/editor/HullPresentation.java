/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.editor;

import hullwright.workbench.live.LanguageService;
import hullwright.workbench.writing.ForReadingOnly;
import hullwright.workbench.live.UiThread;
import java.util.Set;
import java.util.function.Supplier;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.presentation.PresentationReconciler;
import org.eclipse.jface.text.rules.DefaultDamagerRepairer;
import org.eclipse.jface.text.rules.IToken;
import org.eclipse.jface.text.rules.ITokenScanner;
import org.eclipse.jface.text.rules.RuleBasedScanner;
import org.eclipse.jface.text.rules.Token;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.swt.custom.StyledText;

/**
 * Colours the text, and colours it anew when the words of the language are loaded or a colour is changed.
 */
public final class HullPresentation extends PresentationReconciler {

	private final IPropertyChangeListener colourChange = event -> {
		if (HullColours.concerns(event.getProperty())) {
			colourAnew();
		}
	};
	private final NamesOfText names = new NamesOfText(() -> UiThread.later(this::colourAnew));
	private ITextViewer viewer;

	/** Made by the generic editor, once for each editor. */
	public HullPresentation() {
		setDocumentPartitioning(HullPartitions.PARTITIONING);
		use(new HullWordScanner(HullPresentation::keywords, names::kind, kind -> new Token(HullColours.of(kind))), IDocument.DEFAULT_CONTENT_TYPE);
		use(plain(() -> new Token(HullColours.comment())), HullPartitions.COMMENT);
		use(plain(() -> new Token(HullColours.string())), HullPartitions.STRING);
	}

	private void use(ITokenScanner scanner, String partition) {
		DefaultDamagerRepairer repairer = new DefaultDamagerRepairer(scanner);
		setDamager(repairer, partition);
		setRepairer(repairer, partition);
	}

	/** One colour for the whole partition, asked for each time, so that a changed colour shows. */
	private static ITokenScanner plain(Supplier<IToken> colour) {
		return new RuleBasedScanner() {
			@Override
			public void setRange(IDocument document, int offset, int length) {
				setDefaultReturnToken(colour.get());
				super.setRange(document, offset, length);
			}
		};
	}

	private static Set<String> keywords() {
		return LanguageService.get().keywords().getNow(Set.of());
	}

	@Override
	public void install(ITextViewer viewer) {
		if (viewer.getDocument() != null) {
			new HullPartitions().setup(viewer.getDocument());
		}
		super.install(viewer);
		ForReadingOnly.keep(viewer);
		names.follow(viewer);
		this.viewer = viewer;
		HullColours.registry().addListener(colourChange);
		LanguageService.get().keywords().thenRun(() -> UiThread.later(this::colourAnew));
	}

	@Override
	public void uninstall() {
		HullColours.registry().removeListener(colourChange);
		names.leave();
		viewer = null;
		super.uninstall();
	}

	private void colourAnew() {
		StyledText text = viewer == null ? null : viewer.getTextWidget();
		if (text != null && !text.isDisposed()) {
			viewer.invalidateTextPresentation();
		}
	}
}

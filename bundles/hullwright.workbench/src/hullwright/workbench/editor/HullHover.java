/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.editor;

import hullwright.workbench.live.LanguageService;
import java.time.Duration;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextHover;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.Region;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.TextDocumentIdentifier;

/**
 * Says what a name under the pointer is. The platform calls this from a thread of its own, so it may wait for the server.
 */
public final class HullHover implements ITextHover {

	private static final Duration PATIENCE = Duration.ofSeconds(2);

	@Override
	public String getHoverInfo(ITextViewer viewer, IRegion region) {
		LanguageService service = LanguageService.get();
		Optional<TextDocumentIdentifier> file = service.identifier(viewer.getDocument());
		// A finding at this place is shown by the platform; two texts in one box would crowd each other out.
		boolean found = viewer instanceof ISourceViewer source && !FindingsHere.at(source, region.getOffset()).touching().isEmpty();
		if (file.isEmpty() || found) {
			return null;
		}
		try {
			HoverParams params = new HoverParams(file.get(), HullCompletion.position(viewer.getDocument(), region.getOffset()));
			return service.answer(server -> server.getTextDocumentService().hover(params), PATIENCE)
					.map(HullHover::text).filter(text -> !text.isBlank()).orElse(null);
		} catch (BadLocationException e) {
			// the text was changed meanwhile
			return null;
		}
	}

	private static String text(Hover hover) {
		if (hover.getContents().isRight()) {
			MarkupContent content = hover.getContents().getRight();
			return content.getValue();
		}
		return hover.getContents().getLeft().stream()
				.map(part -> part.map(text -> text, marked -> marked.getValue())).collect(Collectors.joining("\n"));
	}

	@Override
	public IRegion getHoverRegion(ITextViewer viewer, int offset) {
		return new Region(offset, 0);
	}
}

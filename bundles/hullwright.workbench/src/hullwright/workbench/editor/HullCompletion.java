/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.editor;

import hullwright.workbench.live.LanguageService;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.Region;
import org.eclipse.jface.text.contentassist.CompletionProposal;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.contentassist.IContentAssistProcessor;
import org.eclipse.jface.text.contentassist.IContextInformation;
import org.eclipse.jface.text.contentassist.IContextInformationValidator;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionList;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.InsertTextFormat;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/**
 * Completes words and names. The generic editor calls this from a thread of its own, so it may wait for the server.
 */
public final class HullCompletion implements IContentAssistProcessor {

	private static final Duration PATIENCE = Duration.ofSeconds(5);
	private static final ICompletionProposal[] NONE = {};

	@Override
	public ICompletionProposal[] computeCompletionProposals(ITextViewer viewer, int offset) {
		IDocument document = viewer.getDocument();
		LanguageService service = LanguageService.get();
		Optional<TextDocumentIdentifier> file = service.identifier(document);
		if (file.isEmpty()) {
			return NONE;
		}
		try {
			CompletionParams params = new CompletionParams(file.get(), position(document, offset));
			Optional<Either<List<CompletionItem>, CompletionList>> answer = service
					.answer(server -> server.getTextDocumentService().completion(params), PATIENCE);
			List<ICompletionProposal> proposals = new ArrayList<>();
			for (CompletionItem item : answer.map(HullCompletion::items).orElse(List.of())) {
				proposals.add(proposal(document, offset, item));
			}
			return proposals.toArray(ICompletionProposal[]::new);
		} catch (BadLocationException e) {
			// the text was changed under the question; the next key asks again
			return NONE;
		}
	}

	private static List<CompletionItem> items(Either<List<CompletionItem>, CompletionList> answer) {
		return answer.map(items -> items, CompletionList::getItems);
	}

	private static ICompletionProposal proposal(IDocument document, int offset, CompletionItem item) throws BadLocationException {
		int start = offset;
		int end = offset;
		String text = item.getInsertText() == null ? item.getLabel() : item.getInsertText();
		if (item.getTextEdit() != null && item.getTextEdit().isLeft()) {
			Range range = item.getTextEdit().getLeft().getRange();
			start = offset(document, range.getStart());
			end = offset(document, range.getEnd());
			text = item.getTextEdit().getLeft().getNewText();
		}
		if (item.getInsertTextFormat() == InsertTextFormat.Snippet) {
			return WholeStatement.proposal(document, new Region(start, end - start), text, item.getLabel(), item.getDetail());
		}
		boolean bare = item.getDetail() == null || item.getDetail().isBlank();
		String label = bare ? item.getLabel() : item.getLabel() + " \u2013 " + item.getDetail();
		return new CompletionProposal(text, start, end - start, text.length(), null, label, null, explanation(item));
	}

	private static String explanation(CompletionItem item) {
		return item.getDocumentation() == null ? null : InfoText.of(item.getDocumentation().map(text -> text, MarkupContent::getValue));
	}

	static Position position(IDocument document, int offset) throws BadLocationException {
		int line = document.getLineOfOffset(offset);
		return new Position(line, offset - document.getLineOffset(line));
	}

	static int offset(IDocument document, Position position) throws BadLocationException {
		return document.getLineOffset(position.getLine()) + position.getCharacter();
	}

	@Override
	public IContextInformation[] computeContextInformation(ITextViewer viewer, int offset) {
		return new IContextInformation[0];
	}

	@Override
	public char[] getCompletionProposalAutoActivationCharacters() {
		// a point is also that of a number; and a list that opens by itself and closes again leaves the platform's assistant with the
		// text's only place for a list, so that neither fixes nor hovers are shown from then on
		return new char[0];
	}

	@Override
	public char[] getContextInformationAutoActivationCharacters() {
		return new char[0];
	}

	@Override
	public String getErrorMessage() {
		return null;
	}

	@Override
	public IContextInformationValidator getContextInformationValidator() {
		return null;
	}
}

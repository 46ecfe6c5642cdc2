/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.editor;

import hullwright.workbench.live.LanguageService;
import hullwright.workbench.live.UiThread;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.DocumentEvent;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IDocumentListener;
import org.eclipse.jface.viewers.IElementComparer;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.SymbolInformation;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.texteditor.ITextEditor;
import org.eclipse.ui.views.contentoutline.ContentOutlinePage;

/**
 * What an open file declares. It follows the text a moment after the last change.
 */
final class HullOutline extends ContentOutlinePage {

	private static final int PAUSE_MILLIS = 400;

	/** Series and networks; what they consist of is opened by hand. */
	private static final int OPEN_LEVELS = 2;

	private final ITextEditor editor;
	private final IDocumentListener listener = new IDocumentListener() {
		@Override
		public void documentAboutToBeChanged(DocumentEvent event) {
			// only the text after the change matters
		}

		@Override
		public void documentChanged(DocumentEvent event) {
			UiThread.after(PAUSE_MILLIS, refresh);
		}
	};
	private final Runnable refresh = this::ask;
	private final Set<Object> opened = new HashSet<>();
	private final OutlineIcons icons = new OutlineIcons();

	HullOutline(ITextEditor editor) {
		this.editor = editor;
	}

	@Override
	public void createControl(Composite parent) {
		super.createControl(parent);
		TreeViewer tree = getTreeViewer();
		tree.setUseHashlookup(true);
		tree.setComparer(new ByName());
		tree.setContentProvider(new Symbols());
		tree.setLabelProvider(new LabelProvider() {
			@Override
			public String getText(Object element) {
				DocumentSymbol symbol = (DocumentSymbol) element;
				return symbol.getDetail() == null || symbol.getDetail().isBlank() ? symbol.getName()
						: symbol.getName() + "  " + symbol.getDetail();
			}

			@Override
			public Image getImage(Object element) {
				return icons.of(((DocumentSymbol) element).getKind());
			}
		});
		IDocument document = document();
		if (document != null) {
			document.addDocumentListener(listener);
			ask();
		}
	}

	@Override
	public void dispose() {
		IDocument document = document();
		if (document != null) {
			document.removeDocumentListener(listener);
		}
		icons.dispose();
		super.dispose();
	}

	private IDocument document() {
		return editor.getDocumentProvider() == null ? null : editor.getDocumentProvider().getDocument(editor.getEditorInput());
	}

	private void ask() {
		LanguageService service = LanguageService.get();
		Optional<TextDocumentIdentifier> file = document() == null ? Optional.empty() : service.identifier(document());
		if (file.isEmpty()) {
			return;
		}
		DocumentSymbolParams params = new DocumentSymbolParams(file.get());
		CompletableFuture<List<Either<SymbolInformation, DocumentSymbol>>> answer = service
				.ask(server -> server.getTextDocumentService().documentSymbol(params));
		answer.thenAccept(symbols -> {
			if (symbols != null) {
				List<DocumentSymbol> roots = symbols.stream().filter(Either::isRight).map(Either::getRight).toList();
				UiThread.later(() -> show(roots));
			}
		});
	}

	private void show(List<DocumentSymbol> roots) {
		TreeViewer tree = getTreeViewer();
		if (tree == null || tree.getControl().isDisposed()) {
			return;
		}
		Object[] expanded = tree.getExpandedElements();
		tree.setInput(roots);
		tree.setExpandedElements(expanded);
		open(tree, roots, OPEN_LEVELS);
	}

	/** Opens the upper levels once, when there is something below them for the first time. */
	private void open(TreeViewer tree, List<DocumentSymbol> symbols, int levels) {
		for (DocumentSymbol symbol : symbols) {
			if (levels > 0 && symbol.getChildren() != null && !symbol.getChildren().isEmpty()) {
				if (opened.add(ByName.key(symbol))) {
					tree.setExpandedState(symbol, true);
				}
				open(tree, symbol.getChildren(), levels - 1);
			}
		}
	}

	@Override
	public void selectionChanged(SelectionChangedEvent event) {
		super.selectionChanged(event);
		if (getTreeViewer().getControl().isFocusControl()
				&& event.getStructuredSelection().getFirstElement() instanceof DocumentSymbol symbol) {
			reveal(symbol);
		}
	}

	private void reveal(DocumentSymbol symbol) {
		try {
			int start = HullCompletion.offset(document(), symbol.getSelectionRange().getStart());
			int end = HullCompletion.offset(document(), symbol.getSelectionRange().getEnd());
			editor.selectAndReveal(start, end - start);
		} catch (BadLocationException e) {
			// the text has changed since; the outline follows in a moment
		}
	}

	/** What is called the same is the same, wherever it has moved in the text; so the tree stays open as it was. */
	private static final class ByName implements IElementComparer {

		@Override
		public boolean equals(Object one, Object other) {
			return key(one).equals(key(other));
		}

		@Override
		public int hashCode(Object element) {
			return key(element).hashCode();
		}

		private static Object key(Object element) {
			return element instanceof DocumentSymbol symbol ? symbol.getName() + '/' + symbol.getDetail() : element;
		}
	}

	private static final class Symbols implements ITreeContentProvider {

		@Override
		public Object[] getElements(Object input) {
			return ((List<?>) input).toArray();
		}

		@Override
		public Object[] getChildren(Object parent) {
			List<DocumentSymbol> children = ((DocumentSymbol) parent).getChildren();
			return children == null ? new Object[0] : children.toArray();
		}

		@Override
		public Object getParent(Object element) {
			return null;
		}

		@Override
		public boolean hasChildren(Object element) {
			return getChildren(element).length > 0;
		}
	}
}

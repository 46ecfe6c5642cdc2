/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.names;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.Stream;
import org.eclipse.core.resources.IFile;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.search.ui.text.AbstractTextSearchResult;
import org.eclipse.search.ui.text.AbstractTextSearchViewPage;
import org.eclipse.search.ui.text.Match;
import org.eclipse.swt.graphics.Image;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.model.WorkbenchLabelProvider;
import org.eclipse.ui.texteditor.ITextEditor;

/**
 * Shows uses of a name as a tree: files, and below each its lines.
 */
public final class UsesPage extends AbstractTextSearchViewPage {

	/** Made by the Search view. */
	public UsesPage() {
		super(FLAG_LAYOUT_TREE);
	}

	@Override
	protected void configureTreeViewer(TreeViewer viewer) {
		viewer.setContentProvider(new FilesAndLines());
		viewer.setLabelProvider(new Labels());
	}

	@Override
	protected void configureTableViewer(TableViewer viewer) {
		throw new IllegalStateException("uses are shown as a tree only");
	}

	@Override
	protected void elementsChanged(Object[] elements) {
		if (getViewer() instanceof TreeViewer tree) {
			tree.refresh();
			tree.expandAll();
		}
	}

	@Override
	protected void clear() {
		getViewer().refresh();
	}

	@Override
	protected void showMatch(Match match, int offset, int length, boolean activate) throws PartInitException {
		if (IDE.openEditor(getSite().getPage(), ((Use) match.getElement()).file(), activate) instanceof ITextEditor editor) {
			editor.selectAndReveal(offset, length);
		}
	}

	private static final class FilesAndLines implements ITreeContentProvider {

		private AbstractTextSearchResult result;

		@Override
		public void inputChanged(Viewer viewer, Object before, Object now) {
			result = (AbstractTextSearchResult) now;
		}

		@Override
		public Object[] getElements(Object input) {
			return uses().map(Use::file).distinct().sorted(Comparator.comparing(file -> file.getFullPath().toString())).toArray();
		}

		@Override
		public Object[] getChildren(Object parent) {
			return parent instanceof IFile file
					? uses().filter(use -> use.file().equals(file)).sorted(Comparator.comparingInt(Use::number)).toArray()
					: new Object[0];
		}

		private Stream<Use> uses() {
			return result == null ? Stream.empty() : Arrays.stream(result.getElements()).map(Use.class::cast);
		}

		@Override
		public Object getParent(Object element) {
			return element instanceof Use use ? use.file() : null;
		}

		@Override
		public boolean hasChildren(Object element) {
			return element instanceof IFile;
		}
	}

	private static final class Labels extends LabelProvider {

		private final WorkbenchLabelProvider files = new WorkbenchLabelProvider();

		@Override
		public String getText(Object element) {
			return element instanceof Use use ? use.number() + ": " + use.text()
					: element instanceof IFile file ? file.getName() + "  " + file.getParent().getFullPath().makeRelative() : "";
		}

		@Override
		public Image getImage(Object element) {
			return element instanceof IFile ? files.getImage(element) : null;
		}

		@Override
		public void dispose() {
			files.dispose();
			super.dispose();
		}
	}
}

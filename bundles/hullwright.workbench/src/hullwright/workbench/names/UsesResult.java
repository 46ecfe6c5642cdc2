/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.names;

import java.util.Arrays;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.search.ui.ISearchQuery;
import org.eclipse.search.ui.text.AbstractTextSearchResult;
import org.eclipse.search.ui.text.IEditorMatchAdapter;
import org.eclipse.search.ui.text.IFileMatchAdapter;
import org.eclipse.search.ui.text.Match;
import org.eclipse.ui.IEditorPart;

/**
 * The lines that name one thing; editors mark them.
 */
public final class UsesResult extends AbstractTextSearchResult implements IEditorMatchAdapter, IFileMatchAdapter {

	private static final Match[] NONE = {};

	private final UsesQuery query;

	UsesResult(UsesQuery query) {
		this.query = query;
	}

	@Override
	public String getLabel() {
		int count = getMatchCount();
		return "'" + query.name() + "' is named in " + count + (count == 1 ? " place" : " places");
	}

	@Override
	public String getTooltip() {
		return getLabel();
	}

	@Override
	public ImageDescriptor getImageDescriptor() {
		return null;
	}

	@Override
	public ISearchQuery getQuery() {
		return query;
	}

	@Override
	public IEditorMatchAdapter getEditorMatchAdapter() {
		return this;
	}

	@Override
	public IFileMatchAdapter getFileMatchAdapter() {
		return this;
	}

	@Override
	public boolean isShownInEditor(Match match, IEditorPart editor) {
		return ((Use) match.getElement()).file().equals(file(editor));
	}

	@Override
	public Match[] computeContainedMatches(AbstractTextSearchResult result, IEditorPart editor) {
		return computeContainedMatches(result, file(editor));
	}

	@Override
	public Match[] computeContainedMatches(AbstractTextSearchResult result, IFile file) {
		return file == null ? NONE : Arrays.stream(result.getElements()).map(Use.class::cast).filter(use -> use.file().equals(file))
				.flatMap(use -> Arrays.stream(result.getMatches(use))).toArray(Match[]::new);
	}

	@Override
	public IFile getFile(Object element) {
		return element instanceof Use use ? use.file() : element instanceof IFile file ? file : null;
	}

	private static IFile file(IEditorPart editor) {
		return Adapters.adapt(editor.getEditorInput(), IFile.class);
	}
}

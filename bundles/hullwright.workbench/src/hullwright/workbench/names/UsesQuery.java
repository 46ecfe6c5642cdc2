/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.names;

import hullwright.workbench.live.Question;
import hullwright.workbench.live.TextPlaces;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.filebuffers.LocationKind;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.Document;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.ReferenceContext;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.search.ui.ISearchQuery;
import org.eclipse.search.ui.ISearchResult;
import org.eclipse.search.ui.text.Match;

/**
 * Looks for all places that name one thing.
 */
final class UsesQuery implements ISearchQuery {

	private final String name;
	private final NamePlace place;
	private final UsesResult result;

	UsesQuery(String name, NamePlace place) {
		this.name = name;
		this.place = place;
		this.result = new UsesResult(this);
	}

	String name() {
		return name;
	}

	@Override
	public IStatus run(IProgressMonitor monitor) throws OperationCanceledException {
		result.removeAll();
		try {
			List<? extends Location> found = new Question<>(server -> server.getTextDocumentService()
					.references(new ReferenceParams(place.file(), place.position(), new ReferenceContext(true)))).ask(monitor);
			for (Location location : found == null ? List.<Location>of() : found) {
				Optional<IFile> file = TextPlaces.file(location.getUri());
				if (file.isPresent()) {
					add(file.get(), location);
				}
			}
			return Status.OK_STATUS;
		} catch (CoreException e) {
			return e.getStatus();
		}
	}

	private void add(IFile file, Location location) throws CoreException {
		IDocument text = text(file);
		try {
			IRegion region = TextPlaces.region(text, location.getRange());
			int line = location.getRange().getStart().getLine();
			String whole = text.get(text.getLineOffset(line), text.getLineLength(line)).strip();
			result.addMatch(new Match(new Use(file, line + 1, whole), region.getOffset(), region.getLength()));
		} catch (BadLocationException e) {
			// the file has just been changed; looking again finds it
		}
	}

	/** As an editor shows it, or else as it is on the disk. */
	private static IDocument text(IFile file) throws CoreException {
		ITextFileBuffer buffer = FileBuffers.getTextFileBufferManager().getTextFileBuffer(file.getFullPath(), LocationKind.IFILE);
		return buffer != null ? buffer.getDocument() : new Document(file.readString());
	}

	@Override
	public String getLabel() {
		return "Uses of '" + name + "'";
	}

	@Override
	public boolean canRerun() {
		return true;
	}

	@Override
	public boolean canRunInBackground() {
		return true;
	}

	@Override
	public ISearchResult getSearchResult() {
		return result;
	}
}

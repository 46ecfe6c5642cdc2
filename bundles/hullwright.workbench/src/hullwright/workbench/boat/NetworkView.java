/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.boat;

import hullwright.documents.drawing.NetworkDrawing;
import hullwright.lang.ide.LiveBoat;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.texteditor.ITextEditor;

/**
 * The network of the boat in view, laid over the boat. What is chosen in the drawing is shown in the text, and the other way round.
 */
public final class NetworkView extends BoatPictureView {

	/** The id under which plugin.xml declares this view. */
	public static final String ID = "hullwright.workbench.network";

	/** From so many devices on the figures take long enough to show the drawing first without them. */
	private static final int MANY_DEVICES = 150;

	private final ISelectionListener caret = this::selected;
	private PlaceInText place;

	/** Where the caret is, line and column counted from 1. */
	private record PlaceInText(Path file, int line, int column) {
	}

	@Override
	public void createPartControl(Composite parent) {
		super.createPartControl(parent);
		getSite().getPage().addPostSelectionListener(caret);
	}

	@Override
	public void dispose() {
		getSite().getPage().removePostSelectionListener(caret);
		super.dispose();
	}

	@Override
	protected void show(LiveBoat boat) {
		draw("Drawing the network", monitor -> {
			if (boat.boat().get().fittedDevices().size() > MANY_DEVICES) {
				shown(NetworkDrawing.withoutFigures(boat.boat().get(), boat.findings()));
			}
			return boat.figures(figures -> NetworkDrawing.of(figures, boat.findings())).orElseThrow();
		}, scene -> places(boat, scene));
	}

	private void selected(IWorkbenchPart part, ISelection selection) {
		if (!(part instanceof ITextEditor editor) || !(selection instanceof ITextSelection text)) {
			return;
		}
		IFile file = Adapters.adapt(editor.getEditorInput(), IFile.class);
		IDocument document = editor.getDocumentProvider() == null ? null : editor.getDocumentProvider().getDocument(editor.getEditorInput());
		if (file == null || file.getLocation() == null || document == null) {
			return;
		}
		column(document, text).ifPresent(column -> {
			place = new PlaceInText(Path.of(file.getLocationURI()).toAbsolutePath().normalize(), text.getStartLine() + 1, column);
			pictureShown();
			canvas().revealChosen();
		});
	}

	/** Marks what stands at the caret, also when that was there before the picture. */
	@Override
	protected void pictureShown() {
		if (place != null && places().isPresent()) {
			Set<String> here = places().get().at(place.file(), place.line(), place.column());
			if (!here.isEmpty()) {
				canvas().choose(here);
			}
		}
	}

	private static Optional<Integer> column(IDocument document, ITextSelection text) {
		try {
			return Optional.of(text.getOffset() - document.getLineOffset(text.getStartLine()) + 1);
		} catch (BadLocationException e) {
			// the text is shorter than it was a moment ago
			return Optional.empty();
		}
	}
}

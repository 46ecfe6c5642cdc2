/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.boat;

import hullwright.lang.ide.LiveBoat;
import hullwright.network.Boat;
import hullwright.network.Origin;
import hullwright.network.PlacesInText;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.texteditor.ITextEditor;

/**
 * Where the things in a picture stand in the texts, and which of them stand at a place of a text.
 */
public final class ElementPlaces {

	private final Path folder;
	private final Map<String, Origin> places = new HashMap<>();

	/**
	 * The places of things.
	 *
	 * @param boat the boat in view
	 * @param elements their qualified names
	 */
	public ElementPlaces(LiveBoat boat, List<String> elements) {
		folder = boat.folder();
		boat.boat().ifPresent(shown -> {
			PlacesInText known = new PlacesInText(shown);
			elements.forEach(element -> places.put(element, known.of(element)));
			layout(shown).forEach(origin -> places.put(origin.element(), origin));
		});
	}

	private static List<Origin> layout(Boat boat) {
		List<Origin> origins = new ArrayList<>();
		boat.layout().places().forEach(place -> origins.add(place.origin()));
		boat.layout().bulkheads().forEach(wall -> origins.add(wall.origin()));
		return origins;
	}

	/** The place of a thing, if it stands in a file. */
	public Optional<Origin> of(String element) {
		return Optional.ofNullable(places.get(element)).filter(origin -> !origin.file().isEmpty());
	}

	/** The things that stand nearest before a place on its line, or none. */
	public Set<String> at(Path file, int line, int column) {
		List<Map.Entry<String, Origin>> onLine = places.entrySet().stream()
				.filter(entry -> entry.getValue().line() == line && folder.resolve(entry.getValue().file()).equals(file)).toList();
		Optional<Integer> nearest = onLine.stream().map(entry -> entry.getValue().column()).filter(at -> at <= column).max(Comparator.naturalOrder())
				.or(() -> onLine.stream().map(entry -> entry.getValue().column()).min(Comparator.naturalOrder()));
		return onLine.stream().filter(entry -> nearest.filter(at -> at == entry.getValue().column()).isPresent()).map(Map.Entry::getKey)
				.collect(Collectors.toSet());
	}

	/** Opens the text of a thing at its place; does nothing for what stands in no file of the workspace. */
	public void open(IWorkbenchPage page, String element, boolean activate) throws PartInitException {
		Optional<Origin> origin = of(element);
		if (origin.isEmpty()) {
			return;
		}
		IFile[] files = ResourcesPlugin.getWorkspace().getRoot().findFilesForLocationURI(folder.resolve(origin.get().file()).toUri());
		if (files.length > 0) {
			IEditorPart editor = IDE.openEditor(page, files[0], activate);
			if (editor instanceof ITextEditor text) {
				text.selectAndReveal(origin.get().offset(), origin.get().length());
			}
		}
	}
}

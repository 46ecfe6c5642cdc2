/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.names;

import hullwright.lang.imports.BuiltInCatalogs;
import hullwright.lang.messages.SpecWords;
import hullwright.lang.scoping.NamesOnBoard;
import hullwright.spec.DataNetwork;
import hullwright.spec.Hull;
import hullwright.spec.HullChange;
import hullwright.spec.Named;
import hullwright.spec.Series;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.XtextResource;

/**
 * The change of one name, wherever it stands.
 */
final class Renaming {

	private final EObject element;
	private final INode declaration;

	private Renaming(EObject element, INode declaration) {
		this.element = element;
		this.declaration = declaration;
	}

	/** Prepares to rename a thing; refuses what is not the project's own. */
	static Renaming of(EObject element) throws RenameRefused {
		if (element == null) {
			throw new RenameRefused("There is no name here that is declared anywhere");
		}
		URI home = element.eResource().getURI();
		String name = NamesInText.nameOf(element);
		if (BuiltInCatalogs.isBuiltIn(home)) {
			throw new RenameRefused("'" + name + "' belongs to the built-in catalog " + BuiltInCatalogs.SCHEME + ":" + home.trimFileExtension().lastSegment()
					+ ", whose names stay as they are");
		}
		return new Renaming(element, NamesInText.declaration(element)
				.orElseThrow(() -> new RenameRefused("What stands here has no name of its own")));
	}

	String oldName() {
		return NamesInText.nameOf(element);
	}

	/** What is renamed, in the words of the trade. */
	String what() {
		return SpecWords.of(element.eClass()) + " '" + oldName() + "'";
	}

	/** The places to change, text by text; refuses a name that is none, is taken, or would change what another name means. */
	Map<XtextResource, List<NameUse>> to(String newName, ProjectTexts texts) throws RenameRefused {
		if (newName.equals(oldName())) {
			return Map.of();
		}
		NewName.check(declaration, newName);
		refuseIfTakenOnSomeHull(newName);
		List<XtextResource> all = texts.thatMayName(element);
		Uses uses = Uses.of(element, all);
		Map<XtextResource, String> changed = new LinkedHashMap<>();
		uses.byText().forEach((text, places) -> changed.put(text, rewritten(text, places, newName)));
		RenameTrial.check(new ArrayList<>(all), changed, newName);
		return uses.byText();
	}

	/** What a hull adds shares its names with what all boats have. */
	private void refuseIfTakenOnSomeHull(String newName) throws RenameRefused {
		Series series = EcoreUtil2.getContainerOfType(element, Series.class);
		HullChange change = EcoreUtil2.getContainerOfType(element, HullChange.class);
		DataNetwork network = change != null ? change.getNetwork() : EcoreUtil2.getContainerOfType(element, DataNetwork.class);
		for (Hull hull : series == null || element instanceof DataNetwork ? List.<Hull>of() : series.getHulls()) {
			List<Named> names = network == null ? NamesOnBoard.besideNetworks(series, hull) : NamesOnBoard.inNetwork(network, hull);
			Named other = !names.contains(element) ? null : names.stream().filter(each -> newName.equals(each.getName())).findFirst().orElse(null);
			if (other != null) {
				throw new RenameRefused("The name '" + newName + "' is taken by the " + SpecWords.of(other.eClass()) + " in line "
						+ NodeModelUtils.findActualNodeFor(other).getStartLine());
			}
		}
	}

	private static String rewritten(XtextResource resource, List<NameUse> places, String newName) {
		String text = resource.getParseResult().getRootNode().getText();
		StringBuilder fresh = new StringBuilder();
		int done = 0;
		for (NameUse place : places) {
			fresh.append(text, done, place.offset()).append(newName);
			done = place.end();
		}
		return fresh.append(text.substring(done)).toString();
	}
}

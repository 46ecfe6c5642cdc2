/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.validation;

import hullwright.lang.LanguageProblem;
import hullwright.lang.imports.Imports;
import hullwright.lang.messages.SpecWords;
import hullwright.lang.scoping.NamesOnBoard;
import hullwright.spec.Catalog;
import hullwright.spec.DataNetwork;
import hullwright.spec.DeviceType;
import hullwright.spec.Import;
import hullwright.spec.Named;
import hullwright.spec.Option;
import hullwright.spec.Pgn;
import hullwright.spec.Place;
import hullwright.spec.PowerSource;
import hullwright.spec.Series;
import hullwright.spec.SpecFile;
import hullwright.spec.SpecPackage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.validation.Check;

/**
 * What is wrong with a text as such: names that are taken, values that are stated twice, imports that lead nowhere. What is
 * wrong with the boat is found by the rules.
 */
public class HullValidator extends AbstractHullValidator {

	@Check
	public void namesInCatalog(Catalog catalog) {
		reportTaken(catalog.getFamilies());
		reportTaken(catalog.getParts());
		reportTaken(catalog.getMessages());
	}

	@Check
	public void namesInDevice(DeviceType device) {
		reportTaken(device.getPorts());
	}

	@Check
	public void namesInMessage(Pgn message) {
		reportTaken(message.getKeys());
		reportTaken(message.getKeys().stream().flatMap(key -> key.getValues().stream()).toList());
	}

	@Check
	public void namesInSeries(Series series) {
		List<Option> options = new ArrayList<>(series.getOptions());
		series.getChoices().forEach(choice -> options.addAll(choice.getOptions()));
		reportTaken(options);
		reportTaken(series.getPlaces());
		reportTaken(series.getBulkheads());
		reportTaken(series.getRoutes());
		reportTaken(series.getSwitches());
		reportTaken(series.getStates());
		reportTaken(series.getSources());
		List<Named> networksAndItems = new ArrayList<>(series.getNetworks());
		series.getItems().forEach(item -> networksAndItems.addAll(NamesOnBoard.of(item)));
		reportTaken(networksAndItems);
		reportTaken(series.getHulls());
	}

	@Check
	public void namesInNetwork(DataNetwork network) {
		reportTaken(NamesOnBoard.of(network));
	}

	@Check
	public void namesInFile(SpecFile file) {
		reportTaken(file.getDeclarations());
	}

	private void reportTaken(List<? extends Named> named) {
		Map<String, Named> first = new HashMap<>();
		for (Named element : named) {
			Named earlier = element.getName() == null ? null : first.putIfAbsent(element.getName(), element);
			if (earlier != null) {
				error("the name '" + element.getName() + "' is taken by the " + SpecWords.of(earlier.eClass()) + " in line " + line(earlier),
						element, SpecPackage.Literals.NAMED__NAME, LanguageProblem.NAME_TAKEN);
			}
		}
	}

	private static int line(EObject element) {
		INode node = NodeModelUtils.findActualNodeFor(element);
		return node == null ? 0 : node.getStartLine();
	}

	/** Separators are optional at a line's end; within a line, a slip in a word would otherwise become the next name. */
	@Check
	public void oneNameALine(Series series) {
		reportRunTogether(series.getPlaces(), "is no zone (dry, wet, hot, outside, vapour, near compass, above); before another place put ';'");
		reportRunTogether(series.getOptions(), "is not understood after an option (requires, excludes); before another option put ';'");
	}

	private void reportRunTogether(List<? extends Named> named, String what) {
		for (int at = 1; at < named.size(); at++) {
			INode before = NodeModelUtils.findActualNodeFor(named.get(at - 1));
			INode here = NodeModelUtils.findActualNodeFor(named.get(at));
			if (before != null && here != null && before.getEndOffset() <= here.getOffset()) {
				String between = here.getRootNode().getText().substring(before.getEndOffset(), here.getOffset());
				if (between.chars().noneMatch(character -> character == '\n' || character == ';' || character == ',')) {
					error("'" + named.get(at).getName() + "' " + what, named.get(at), SpecPackage.Literals.NAMED__NAME, LanguageProblem.NOT_UNDERSTOOD);
				}
			}
		}
	}

	@Check
	public void liesInCircle(Place place) {
		Set<Place> seen = new HashSet<>();
		for (Place next = place.getAbove(); next != null && seen.add(next); next = next.getAbove()) {
			if (next == place) {
				error("'" + place.getName() + "' lies above itself, in a circle", place, SpecPackage.Literals.PLACE__ABOVE,
						LanguageProblem.LIES_IN_CIRCLE);
			}
		}
	}

	@Check
	public void feedsInCircle(PowerSource source) {
		Set<PowerSource> seen = new HashSet<>();
		for (PowerSource next = FeedingSource.of(source); next != null && seen.add(next); next = FeedingSource.of(next)) {
			if (next == source) {
				error("'" + source.getName() + "' feeds itself, in a circle", source, SpecPackage.Literals.NAMED__NAME,
						LanguageProblem.FEEDS_IN_CIRCLE);
			}
		}
	}

	/** Properties come in any order, which the grammar cannot keep from coming twice. */
	@Check
	public void statedOnce(EObject element) {
		for (EStructuralFeature feature : element.eClass().getEAllStructuralFeatures()) {
			int most = feature.getUpperBound();
			if (most > 0 && element.eIsSet(feature)) {
				List<INode> statements = NodeModelUtils.findNodesForFeature(element, feature);
				if (statements.size() > most) {
					INode surplus = statements.get(most);
					getMessageAcceptor().acceptError("'" + surplus.getText().strip() + "': this is stated already in line "
							+ statements.get(0).getStartLine(), element, surplus.getOffset(), surplus.getLength(), LanguageProblem.STATED_TWICE);
				}
			}
		}
	}

	@Check
	public void importFound(Import statement) {
		if (statement.getImportURI() != null && Imports.file(statement).isEmpty()) {
			error("there is no file '" + statement.getImportURI() + "' to import in this project; built-in catalogs are written 'standard:parts'",
					SpecPackage.Literals.IMPORT__IMPORT_URI, LanguageProblem.IMPORT_NOT_FOUND);
		}
	}

	@Check
	public void importsInCircle(SpecFile file) {
		Imports.of(file).forEach((statement, imported) -> {
			if (reaches(imported, file, new HashSet<>())) {
				error("the files import each other in a circle: '" + statement.getImportURI() + "' leads back to this file",
						statement, SpecPackage.Literals.IMPORT__IMPORT_URI, LanguageProblem.IMPORT_CYCLE);
			}
		});
	}

	private static boolean reaches(SpecFile from, SpecFile goal, Set<SpecFile> seen) {
		return from == goal || seen.add(from) && Imports.of(from).values().stream().anyMatch(next -> reaches(next, goal, seen));
	}
}

/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;

import hullwright.lang.HullLanguage;
import hullwright.lang.imports.VisibleCatalogs;
import hullwright.network.Boat;
import hullwright.network.Selection;
import hullwright.resolve.SeriesPlan;
import hullwright.spec.Catalog;
import hullwright.spec.Declaration;
import hullwright.spec.DataNetwork;
import hullwright.spec.Named;
import hullwright.spec.Series;
import hullwright.spec.SpecFile;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What may be written in another way without changing a boat: the order of what is independent, the files that it stands in,
 * names, white space and comments. The texts are made anew from a text that uses the whole language.
 */
class SameBoatTest {

	private static final String WHOLE = read();

	private static String read() {
		try {
			return Files.readString(Path.of("../hullwright.lang/src_test/hullwright/lang/whole-language.hull"));
		} catch (IOException e) {
			throw new IllegalStateException(e);
		}
	}

	/** The boats of a project with one series: every orderable one and every hull, by selection. */
	private static Map<String, String> boats(Map<String, String> files) {
		ReadProject project = new SpecReader().read(Snapshot.of(files));
		assertEquals(List.of(), project.problems().stream().map(problem -> problem.origin().line() + ": " + problem.message()).toList());
		Series series = (Series) project.files().values().stream().flatMap(file -> file.getDeclarations().stream())
				.filter(Series.class::isInstance).findFirst().orElseThrow();
		SeriesPlan plan = new SeriesPlan(series, HullLanguage.services().getInstance(VisibleCatalogs.class).from(series), new TextOrigins());
		List<Selection> selections = new ArrayList<>();
		plan.options().orderable(1000).combinations().forEach(options -> selections.add(SeriesPlan.ordered(options)));
		plan.hullNames().forEach(hull -> selections.add(plan.hull(hull).orElseThrow()));
		assertTrue(selections.size() > 5);
		Map<String, String> boats = new TreeMap<>();
		for (Selection selection : selections) {
			Boat boat = plan.boat(selection);
			boats.put(selection.toString(), BoatAsText.of(boat));
		}
		return boats;
	}

	private static Map<String, String> boats(String text) {
		return boats(Map.of("boat.hull", text));
	}

	private static SpecFile parsed(String text) {
		return new SpecReader().read(Snapshot.of(Map.of("boat.hull", text))).files().get("boat.hull");
	}

	/** The comparison itself sees a change, or the other tests would show nothing. */
	@ParameterizedTest
	@ValueSource(strings = { "cable 6 m|cable 7 m", "3 LEN|4 LEN", "earths shield label|label", "to instruments.gateway.in1|to instruments.gateway.pc" })
	void anotherBoatIsSeen(String change) {
		String[] fromTo = change.split("\\|");
		assertTrue(WHOLE.contains(fromTo[0]), fromTo[0]);
		assertNotEquals(boats(WHOLE), boats(WHOLE.replaceFirst(fromTo[0], fromTo[1])));
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4, 5 })
	void theOrderOfWhatIsIndependent(long seed) {
		String other = shuffled(WHOLE, new Random(seed));
		assertNotEquals(WHOLE, other);
		assertEquals(boats(WHOLE), boats(other));
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2 })
	void theFilesThatItStandsIn(long seed) {
		Map<String, String> files = new LinkedHashMap<>();
		SpecFile file = parsed(WHOLE);
		StringBuilder imports = new StringBuilder();
		for (Declaration declaration : file.getDeclarations()) {
			INode node = NodeModelUtils.findActualNodeFor(declaration);
			String own = WHOLE.substring(node.getOffset(), node.getEndOffset());
			if (declaration instanceof Catalog) {
				files.put(declaration.getName() + ".hull", own);
				imports.append("import \"").append(declaration.getName()).append(".hull\"\n");
			} else {
				files.put("rest.hull", files.getOrDefault("rest.hull", "") + own + "\n");
			}
		}
		files.put("rest.hull", imports + files.get("rest.hull"));
		files.replaceAll((path, text) -> path.equals("rest.hull") ? text : shuffled(text, new Random(seed)));
		assertEquals(boats(WHOLE), boats(files));
	}

	@ParameterizedTest
	@ValueSource(strings = { "Q9", "\u00e9" })
	void namesChangeNothingButNames(String suffix) {
		assertTrue(renamed(WHOLE, suffix).contains("tee dash" + suffix + " : block4" + suffix + " at helm" + suffix));
		Map<String, String> renamed = new TreeMap<>();
		boats(renamed(WHOLE, suffix)).forEach((selection, boat) -> renamed.put(selection.replace(suffix, ""), boat.replace(suffix, "")));
		assertEquals(boats(WHOLE), renamed);
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3 })
	void whiteSpaceAndComments(long seed) {
		assertEquals(boats(WHOLE), boats(spaced(WHOLE, new Random(seed))));
	}

	/** The text with parts, messages, networks, what hangs on them, items, hulls and supplies in another order. */
	private static String shuffled(String text, Random random) {
		Map<Integer, INode> replaced = new TreeMap<>();
		Map<Integer, String> by = new TreeMap<>();
		SpecFile file = parsed(text);
		List<List<? extends EObject>> independent = new ArrayList<>();
		for (Declaration declaration : file.getDeclarations()) {
			if (declaration instanceof Catalog catalog) {
				independent.addAll(List.of(catalog.getFamilies(), catalog.getParts(), catalog.getMessages()));
			} else if (declaration instanceof Series series) {
				independent.addAll(List.of(series.getSources(), series.getHulls(), series.getItems(), series.getSwitches(), series.getRoutes()));
				for (DataNetwork network : series.getNetworks()) {
					independent.add(network.getElements());
				}
			}
		}
		for (List<? extends EObject> elements : independent) {
			List<INode> nodes = new ArrayList<>();
			elements.forEach(element -> nodes.add(NodeModelUtils.findActualNodeFor(element)));
			List<INode> mixed = new ArrayList<>(nodes);
			Collections.shuffle(mixed, random);
			for (int at = 0; at < nodes.size(); at++) {
				replaced.put(nodes.get(at).getOffset(), nodes.get(at));
				by.put(nodes.get(at).getOffset(), text.substring(mixed.get(at).getOffset(), mixed.get(at).getEndOffset()));
			}
		}
		StringBuilder result = new StringBuilder();
		int done = 0;
		for (Map.Entry<Integer, INode> each : replaced.entrySet()) {
			result.append(text, done, each.getKey()).append(by.get(each.getKey()));
			done = each.getValue().getEndOffset();
		}
		return result.append(text.substring(done)).toString();
	}

	/** The text with all names that something in it has given another ending. */
	private static String renamed(String text, String suffix) {
		SpecFile file = parsed(text);
		Set<String> names = new HashSet<>();
		for (TreeIterator<EObject> contents = file.eAllContents(); contents.hasNext();) {
			if (contents.next() instanceof Named named && named.getName() != null) {
				names.add(named.getName());
			}
		}
		// formatters and the values of a profile are given by the trade and by rules
		names.removeAll(Set.of("DPT", "VHW", "HDG", "margin", "spare", "mode", "m", "s", "A", "V", "W"));
		StringBuilder result = new StringBuilder();
		for (ILeafNode leaf : NodeModelUtils.findActualNodeFor(file).getLeafNodes()) {
			boolean name = !leaf.isHidden() && names.contains(leaf.getText()) && Character.isLetter(leaf.getText().charAt(0))
					&& leaf.getGrammarElement() instanceof org.eclipse.xtext.RuleCall;
			result.append(leaf.getText()).append(name ? suffix : "");
		}
		return result.toString();
	}

	/** The text with other white space and comments between its words, each line end kept somewhere. */
	private static String spaced(String text, Random random) {
		StringBuilder result = new StringBuilder();
		for (ILeafNode leaf : NodeModelUtils.findActualNodeFor(parsed(text)).getLeafNodes()) {
			if (leaf.isHidden() && leaf.getText().isBlank()) {
				result.append(switch (random.nextInt(5)) {
				case 0 -> leaf.getText() + "\t";
				case 1 -> " // a word\n";
				case 2 -> "\r\n/* more\n words */ ";
				case 3 -> "\n\n\n";
				default -> leaf.getText();
				});
			} else {
				result.append(leaf.getText());
			}
		}
		return result.toString();
	}
}

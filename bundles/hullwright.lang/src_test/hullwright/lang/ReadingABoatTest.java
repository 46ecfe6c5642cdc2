/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.quantity.Length;
import hullwright.spec.AddElement;
import hullwright.spec.BackboneCable;
import hullwright.spec.BackboneElement;
import hullwright.spec.BackboneItem;
import hullwright.spec.BackbonePart;
import hullwright.spec.CableLeg;
import hullwright.spec.ChangeItem;
import hullwright.spec.Condition;
import hullwright.spec.DataNetwork;
import hullwright.spec.Drop;
import hullwright.spec.Hull;
import hullwright.spec.Leg;
import hullwright.spec.Option;
import hullwright.spec.PartLeg;
import hullwright.spec.RemoveItem;
import hullwright.spec.Series;
import hullwright.spec.WhenBlock;
import hullwright.spec.WhenElements;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.xtext.resource.XtextResource;
import org.junit.jupiter.api.Test;

/** A text says what a person reads in it: order, conditions, and which word belongs to what. */
class ReadingABoatTest {

	@Test
	void theBackboneKeepsTheOrderOfTheWalk() {
		assertEquals("terminator fore | cable 6 m | tee dash | tap feed | wall w | cable 2 m of mid | tee stern | terminator aft",
				backbone("""
						terminator fore : endFemale
						cable 6 m
						tee dash : block4
						tap feed : midTap from house earths shield
						wall w : wallPair
						cable 2 m of mid
						tee stern : tee1
						terminator aft : endMale
						"""));
	}

	/** A 'when' behind an item is its condition; a 'when' with a brace begins a block, in whatever line it stands. */
	@Test
	void aConditionBehindAnItemAndABlockBelowIt() {
		assertEquals("cable 1 m when a | [when b: cable 2 m; else cable 3 m when c] | cable 4 m",
				backbone("""
						cable 1 m when a
						when b { cable 2 m } else { cable 3 m when c }
						cable 4 m
						"""));
		assertEquals("tee dash | [when a or not b and c: tee more] | tee other when a and b",
				backbone("tee dash : tee1 when a or not b and c { tee more : tee1 } tee other : tee1 when a and b"));
		assertEquals("tee dash | [when a: cable 1 m when b; cable 2 m]",
				backbone("tee dash : tee1 at helm label \"D\" when a { cable 1 m when b; cable 2 m }"));
	}

	@Test
	void anInLineTerminatorHasItsSensorBehindIt() {
		Series series = series("network n { backbone of light { terminator mast : mastEnd at helm label \"T\" to wind : windSensor { label \"W\" } } }");
		BackbonePart terminator = (BackbonePart) series.getNetworks().get(0).getBackbones().get(0).getElements().get(0);
		assertEquals("T", terminator.getLabel());
		assertEquals("helm", terminator.getPlace().getName());
		assertEquals("wind", terminator.getBehind().getName());
		assertEquals("W", terminator.getBehind().getLabel());
	}

	@Test
	void aDropGoesFromItsPortByItsLegsToItsDevice() {
		DataNetwork network = series("""
				network n {
					backbone of light { tee dash : block4 }
					drop dash.1 to depth : depthTransducer
					drop dash.2 via microToPush, 1 m of pushLight, pushToMicro, 30 in to gauges : instrumentDisplay at helm { label "ID 1" } when a
					when b or c { drop dash.3 via 2 m of light to vhf : vhfRadio when not a, else prepared }
				}
				""").getNetworks().get(0);
		Drop depth = (Drop) network.getElements().get(0);
		assertEquals("dash.1", depth.getFrom().getPart().getName() + "." + depth.getFrom().getPort());
		assertTrue(depth.getLegs().isEmpty());
		Drop gauges = (Drop) network.getElements().get(1);
		assertEquals(List.of("microToPush", "1 m of pushLight", "pushToMicro", "0.762 m"), gauges.getLegs().stream().map(ReadingABoatTest::say).toList());
		assertEquals("ID 1", gauges.getDevice().getLabel());
		assertEquals("a", say(gauges.getCondition()));
		WhenElements block = (WhenElements) network.getElements().get(2);
		assertEquals("b or c", say(block.getCondition()));
		assertEquals("not a", say(block.getElements().get(0).getCondition()));
		assertTrue(((Drop) block.getElements().get(0)).isPrepared());
	}

	@Test
	void optionsRequireAndExcludeWhatFollowsThem() {
		Series series = (Series) HullTexts.spec(read("""
				series S {
					options {
						a "First" requires b and c excludes d and e
						b
						c; d, e
						one of f "Left", g "Right"
						one of h, i
					}
				}
				""")).getDeclarations().get(0);
		Option first = series.getOptions().get(0);
		assertEquals("First", first.getTitle());
		assertEquals(List.of("b", "c"), first.getRequires().stream().map(Option::getName).toList());
		assertEquals(List.of("d", "e"), first.getExcludes().stream().map(Option::getName).toList());
		assertEquals(List.of("a", "b", "c", "d", "e"), series.getOptions().stream().map(Option::getName).toList());
		assertEquals(List.of("f g", "h i"), series.getChoices().stream()
				.map(choice -> choice.getOptions().stream().map(Option::getName).collect(Collectors.joining(" ")))
				.toList());
	}

	@Test
	void aHullIsASelectionAndItsChanges() {
		Series series = series("""
				network n { backbone of light { tee dash : block4 } drop dash.1 to wind : windSensor drop dash.2 to vhf : vhfRadio }
				hull 4 with a, b
				hull seven {
					n.wind : weatherSensor
					n.wind via 3 m of light
					n.vhf : aisReceiver via 1 m of light, 2 m
					remove n.vhf
					add drop n.dash.3 via 2 m of light to horn : fogSignal at helm
				}
				""");
		Hull four = series.getHulls().get(0);
		assertEquals("4", four.getName());
		assertEquals(List.of("a", "b"), four.getOptions().stream().map(Option::getName).toList());
		Hull seven = series.getHulls().get(1);
		assertEquals("weatherSensor", ((ChangeItem) seven.getChanges().get(0)).getType().getName());
		assertEquals(List.of("3 m of light"), ((ChangeItem) seven.getChanges().get(1)).getLegs().stream().map(ReadingABoatTest::say).toList());
		assertEquals("aisReceiver", ((ChangeItem) seven.getChanges().get(2)).getType().getName());
		assertEquals(List.of("1 m of light", "2 m"), ((ChangeItem) seven.getChanges().get(2)).getLegs().stream().map(ReadingABoatTest::say).toList());
		assertEquals("vhf", ((RemoveItem) seven.getChanges().get(3)).getTarget().getName());
		Drop horn = (Drop) ((AddElement) seven.getChanges().get(4)).getElement();
		assertEquals("dash.3", horn.getFrom().getPart().getName() + "." + horn.getFrom().getPort());
		assertEquals("fogSignal", horn.getDevice().getType().getName());
	}

	/** What is wrong must be sayable, or no rule can find it. */
	@Test
	void wrongBoatsCanBeWritten() {
		assertEquals("terminator x | terminator y | tee dash", backbone("terminator x : endMale terminator y : endMale tee dash : tee1"));
		DataNetwork network = series("""
				network n {
					backbone of light { tee dash : tee1 tap left : midTap from house, house tap right : midTap from house earths shield }
					backbone spare { }
					drop dash.1 to first : windSensor
					drop dash.1 to second : windSensor
					drop dash.9 via wallPair, endMale to third : windSensor
				}
				""").getNetworks().get(0);
		assertEquals(2, network.getBackbones().size());
		assertEquals(3, network.getElements().size());
	}

	private static String backbone(String elements) {
		return series("network n { backbone of light { " + elements + " } }").getNetworks().get(0).getBackbones().get(0).getElements().stream()
				.map(ReadingABoatTest::say)
				.collect(Collectors.joining(" | "));
	}

	private static Series series(String body) {
		return (Series) HullTexts.spec(read("""
				import "standard:parts"
				series S {
					options { a; b; c }
					places { helm }
					supply house { 12 V }
					%s
				}
				""".formatted(body))).getDeclarations().get(0);
	}

	private static XtextResource read(String text) {
		XtextResource resource = new HullTexts().read(text);
		assertEquals(List.of(), HullTexts.describe(HullTexts.problems(resource)), text);
		return resource;
	}

	private static String say(BackboneElement element) {
		if (element instanceof WhenBlock block) {
			String otherwise = block.getOtherwise().isEmpty() ? "" : "; else " + say(block.getOtherwise());
			return "[when " + say(block.getCondition()) + ": " + say(block.getElements()) + otherwise + "]";
		}
		BackboneItem item = (BackboneItem) element;
		return thing(item) + (item.getCondition() == null ? "" : " when " + say(item.getCondition()));
	}

	private static String say(List<BackboneElement> items) {
		return items.stream().map(ReadingABoatTest::say).collect(Collectors.joining("; "));
	}

	private static String thing(BackboneItem item) {
		if (item instanceof BackboneCable cable) {
			return "cable " + cable.getLength() + (cable.getType() == null ? "" : " of " + cable.getType().getName());
		}
		String kind = switch (((BackbonePart) item).getType().eClass().getName()) {
		case "TerminatorType" -> "terminator";
		case "TeeType" -> "tee";
		case "TapType" -> "tap";
		default -> "wall";
		};
		return kind + " " + item.getName();
	}

	private static String say(Leg leg) {
		if (leg instanceof CableLeg cable) {
			Length length = cable.getLength();
			return length + (cable.getType() == null ? "" : " of " + cable.getType().getName());
		}
		return ((PartLeg) leg).getType().getName();
	}

	private static String say(Condition condition) {
		return condition.getAlternatives().stream()
				.map(all -> all.getTerms().stream()
						.map(term -> (term.isNegated() ? "not " : "") + term.getOption().getName())
						.collect(Collectors.joining(" and ")))
				.collect(Collectors.joining(" or "));
	}
}

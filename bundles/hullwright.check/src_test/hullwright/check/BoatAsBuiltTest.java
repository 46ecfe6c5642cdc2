/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.lang.HullLanguage;
import hullwright.lang.imports.VisibleCatalogs;
import hullwright.network.Boat;
import hullwright.network.CableRun;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.resolve.SeriesPlan;
import hullwright.spec.Series;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * The boat that is made of a text: what lies where, which way round, under which name.
 */
class BoatAsBuiltTest {

	private static SeriesPlan plan(String text) {
		ReadProject project = new SpecReader().read(Snapshot.of(Map.of("boat.hull", text)));
		assertEquals(List.of(), project.problems());
		Series series = (Series) project.files().get("boat.hull").getDeclarations().stream().filter(Series.class::isInstance).findFirst().orElseThrow();
		return new SeriesPlan(series, HullLanguage.services().getInstance(VisibleCatalogs.class).from(series), new TextOrigins());
	}

	private static Boat boat(String text, String... options) {
		return plan(text).boat(SeriesPlan.ordered(new TreeSet<>(List.of(options))));
	}

	private static List<Element> backbone(Boat boat) {
		return boat.networks().get(0).backbones().get(0).elements();
	}

	private static List<String> names(List<Element> elements) {
		return elements.stream().map(element -> element.origin().simpleName()).toList();
	}

	private static String series(String backbone, String rest) {
		return """
				import "standard:parts"
				series Skerry "Invented" {
				  options { flybridge; mast }
				  network instruments {
				    backbone of light {
				      %s
				    }
				    %s
				  }
				}
				""".formatted(backbone, rest);
	}

	@Test
	void whatAnOptionLeavesOutClosesTheGap() {
		String text = series("""
				terminator left : endFemale
				tee bow : tee1
				when flybridge { cable 3 m  tee top : tee1 } else { cable 5 m }
				cable 2 m when mast
				terminator right : endMale
				""", "");
		assertEquals(List.of("left", "bow", "bow-to-right", "right"), names(backbone(boat(text))));
		assertEquals(List.of("left", "bow", "bow-to-top", "top", "right"), names(backbone(boat(text, "flybridge"))));
		assertEquals(List.of("left", "bow", "bow-to-top", "top", "top-to-right", "right"), names(backbone(boat(text, "flybridge", "mast"))));
	}

	@Test
	void aCableIsOfTheBackbonesKindUnlessItSaysOtherwise() {
		List<Element> elements = backbone(boat(series("cable 3 m cable long 4 m of mid", "")));
		assertEquals("light", ((CableRun) elements.get(0)).cable().orElseThrow().identity().name());
		assertEquals("mid", ((CableRun) elements.get(1)).cable().orElseThrow().identity().name());
		assertEquals("Skerry.instruments.long", elements.get(1).name());
		assertEquals(4, ((CableRun) elements.get(1)).length().metres());
	}

	@Test
	void aWalkFromTheOtherEndLiesTheOtherWayRound() {
		List<Element> oneWay = backbone(boat(series("terminator a : endFemale tee t : tee1 cable 3 m terminator b : endMale", "")));
		List<Element> otherWay = backbone(boat(series("terminator b : endMale cable 3 m tee t : tee1 terminator a : endFemale", "")));
		assertTrue(oneWay.stream().noneMatch(Element::turned));
		assertEquals(List.of(false, true, true, false), otherWay.stream().map(Element::turned).toList());
		for (List<Element> walk : List.of(oneWay, otherWay)) {
			for (int at = 1; at < walk.size(); at++) {
				assertTrue(walk.get(at - 1).towardsEnd().orElseThrow().mates(walk.get(at).towardsStart().orElseThrow()), walk + " at " + at);
			}
		}
	}

	@Test
	void aJointThatCannotMateLeavesTheOthersMated() {
		// two pins meet in the middle whatever is done; one joint of three is the least
		List<Element> walk = backbone(boat(series("terminator a : endMale tee t : tee1 tee u : tee1 terminator b : endMale", "")));
		long open = 0;
		for (int at = 1; at < walk.size(); at++) {
			open += walk.get(at - 1).towardsEnd().orElseThrow().mates(walk.get(at).towardsStart().orElseThrow()) ? 0 : 1;
		}
		assertEquals(1, open);
	}

	@Test
	void aDropStartsAtItsPortAndEndsAtItsDevice() {
		Network network = boat(series("tee t : block4", """
				drop t.3 via microToPush, 1 m of pushLight to repeater : pushInstrumentDisplay
				drop t.1 via 2 m to display : instrumentDisplay { label "CD1" }
				""")).networks().get(0);
		Drop repeater = network.drops().get(0);
		assertEquals("Skerry.instruments.t", repeater.from().part());
		assertEquals(3, repeater.from().port().orElseThrow());
		assertEquals(List.of("Skerry.instruments.repeater.leg-1", "Skerry.instruments.repeater.leg-2"), repeater.legs().stream().map(Element::name).toList());
		assertTrue(repeater.legs().stream().noneMatch(Element::turned));
		Drop display = network.drops().get(1);
		assertEquals("light", ((CableRun) display.legs().get(0)).cable().orElseThrow().identity().name());
		assertEquals("CD1", display.device().orElseThrow().label());
	}

	@Test
	void anInLineTerminatorHasItsDeviceBehindIt() {
		Fitting end = (Fitting) backbone(boat(series("tee t : tee1 terminator masthead : mastEnd to wind : windSensor", ""))).get(1);
		assertEquals("Skerry.instruments.wind", end.details().device().orElseThrow().name());
	}

	@Test
	void whatIsPreparedIsThereWithoutItsDevice() {
		String text = series("tee t : block4", "drop t.1 via 2 m to radar : radarSensor when mast, else prepared");
		assertTrue(boat(text).networks().get(0).drops().get(0).device().isEmpty());
		assertTrue(boat(text, "mast").networks().get(0).drops().get(0).device().isPresent());
	}

	@Test
	void theOrderOfWhatIsIndependentChangesNothing() {
		String one = series("tee t : block4", "drop t.1 via 2 m to a : instrumentDisplay\ndrop t.2 via 3 m to b : instrumentDisplay");
		String other = series("tee t : block4", "drop t.2 via 3 m to b : instrumentDisplay // comment\n\n\ndrop t.1 via 2 m to a : instrumentDisplay");
		List<Drop> ones = boat(one).networks().get(0).drops();
		List<Drop> others = boat(other).networks().get(0).drops();
		assertEquals(without(ones.get(0)), without(others.get(1)));
		assertEquals(without(ones.get(1)), without(others.get(0)));
	}

	/** A drop without the places in the text, which the order changes. */
	private static List<Object> without(Drop drop) {
		return List.of(drop.name(), drop.from(), drop.device().orElseThrow().model(), ((CableRun) drop.legs().get(0)).length());
	}

	@Test
	void everyElementKnowsItsPlaceInTheText() {
		Element tee = backbone(boat(series("tee bow : tee1", ""))).get(0);
		assertEquals(6, tee.origin().line());
		assertEquals(11, tee.origin().column());
		assertEquals("boat.hull", tee.origin().file());
		assertEquals(3, tee.origin().length());
	}
}

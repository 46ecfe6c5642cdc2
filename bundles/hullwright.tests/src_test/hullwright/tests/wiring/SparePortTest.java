/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hullwright.analysis.wiring.SparePort;
import hullwright.testkit.BoatText;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Which ports of a network nothing is plugged into.
 */
class SparePortTest {

	private static List<SparePort> spare(String hanging) {
		return SparePort.of(BoatText.boat("""
				import "standard:parts"
				series Skerry "Invented" {
				  supply house { 12 V }
				  network instruments {
				    backbone of light {
				      terminator left : endFemale
				      tee bow : block2
				      cable 6 m
				      tee stern : pushPortTee
				      terminator right : endMale
				    }
				""" + hanging + "\n  }\n}\n").networks().get(0));
	}

	private static List<String> labels(String hanging) {
		return spare(hanging).stream().map(port -> port.label() + (port.capped() ? " capped" : "")).toList();
	}

	@Test
	void allAreSpareWhereNothingHangsOnTheBackbone() {
		assertEquals(List.of("bow.1", "bow.2", "stern.1"), labels(""));
		assertEquals("push female", spare("").get(2).connector().orElseThrow().toString());
	}

	@Test
	void aDropAPreparedDropAndAFeedTakeTheirPorts() {
		assertEquals(List.of("stern.1"), labels("drop bow.1 to depth : depthTransducer\n feed bow.2 via powerCord from house"));
		assertEquals(List.of("bow.2", "stern.1"), labels("drop bow.1 via 1 m of light prepared"));
	}

	@Test
	void aCappedPortIsSpareAndClosed() {
		assertEquals(List.of("bow.1", "bow.2 capped", "stern.1"), labels("cap bow.2 with microPortCap"));
	}

	@Test
	void aBlockOnADropHasSparePortsToo() {
		assertEquals(List.of("bow.2", "stern.1", "more.1"), labels("drop bow.1 via 1 m of light, more : tee1 to display : instrumentDisplay"));
	}
}

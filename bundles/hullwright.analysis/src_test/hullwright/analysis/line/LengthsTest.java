/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import static hullwright.analysis.line.Lines.HEAVY;
import static hullwright.analysis.line.Lines.LIGHT;
import static hullwright.analysis.line.Lines.adapter;
import static hullwright.analysis.line.Lines.backbone;
import static hullwright.analysis.line.Lines.drop;
import static hullwright.analysis.line.Lines.run;
import static hullwright.analysis.line.Lines.tee;
import static hullwright.analysis.line.Lines.terminator;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.analysis.line.TerminatorPlace.Where;
import hullwright.network.Backbone;
import hullwright.network.Drop;
import hullwright.network.Feed;
import hullwright.network.Network;
import hullwright.network.NetworkKind;
import hullwright.network.Origin;
import hullwright.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Lengths of drops and of backbones, by both published counts of the ends (cabling guide N2-A §1.2 and §1.4, display maker's
 * pages N2-B p. 12).
 */
class LengthsTest {

	private static final double EXACT = 1e-9;

	private static BackboneLength length(Backbone backbone, Drop... drops) {
		return BackboneLength.of(backbone, List.of(drops), DropLength::of);
	}

	@Test
	void aDropIsMeasuredWholeFromTeeToDevice() {
		DropLength length = DropLength.of(drop("tee", 2, run(3, LIGHT), adapter(0.4), run(0.5, LIGHT)));
		assertEquals(5.9, length.total().metres(), EXACT);
		assertEquals(3.5, length.cable().metres(), EXACT);
		assertEquals(0.4, length.adapters().metres(), EXACT);
		assertFalse(length.isIntegralLeadOnly());
		assertTrue(DropLength.of(drop("tee", 6)).isIntegralLeadOnly());
	}

	@Test
	void aLongDropAtTheEndTeeStandsInForTheCableToTheTerminator() {
		// by hand: 5 + 40 + 2 = 47 along the cable; the 6 m drop replaces the 2 m behind its tee, the 3 m drop does not replace the 5 m
		BackboneLength length = length(backbone(terminator("a"), run(5, LIGHT), tee("bow"), run(40, LIGHT), tee("stern"), run(2, LIGHT), terminator("b")),
				drop("bow", 3), drop("stern", 6), drop("stern", 1));
		assertEquals(47, length.run().metres(), EXACT);
		assertEquals(5 + 40 + 6, length.longerOf().metres(), EXACT);
		assertEquals(47 + 3 + 6, length.sum().metres(), EXACT);
		assertEquals(100, length.longerOfAllowance().orElseThrow().metres(), EXACT);
	}

	@Test
	void aDropInTheMiddleCountsForNeitherEnd() {
		BackboneLength length = length(backbone(terminator("a"), tee("bow"), run(10, LIGHT), tee("mid"), run(10, LIGHT), tee("stern"), terminator("b")),
				drop("mid", 6));
		assertEquals(20, length.longerOf().metres(), EXACT);
		assertEquals(20, length.sum().metres(), EXACT);
	}

	@Test
	void oneTeeAloneIsBothEnds() {
		BackboneLength length = length(backbone(terminator("a"), tee("only"), terminator("b")), drop("only", 6));
		assertEquals(12, length.sum().metres(), EXACT);
	}

	@Test
	void gradesUseUpTheirOwnShares() {
		// by hand: 50 m of what may be 100 m and 60 m of what may be 200 m are 0.5 + 0.3 = 0.8, so 110 m of 137.5 m
		BackboneLength length = length(backbone(terminator("a"), run(50, LIGHT), tee("mid"), run(60, HEAVY), terminator("b")));
		assertEquals(110 / 0.8, length.longerOfAllowance().orElseThrow().metres(), 1e-6);
	}

	@Test
	void turningTheBackboneRoundChangesNoLength() {
		Drop[] drops = { drop("bow", 5.5), drop("stern", 1) };
		BackboneLength oneWay = length(backbone(terminator("a"), run(1, LIGHT), tee("bow"), run(30, HEAVY), tee("stern"), run(4, LIGHT), terminator("b")), drops);
		BackboneLength otherWay = length(backbone(terminator("b"), run(4, LIGHT), tee("stern"), run(30, HEAVY), tee("bow"), run(1, LIGHT), terminator("a")), drops);
		assertEquals(oneWay.run(), otherWay.run());
		assertEquals(oneWay.longerOf().metres(), otherWay.longerOf().metres(), EXACT);
		assertEquals(oneWay.sum().metres(), otherWay.sum().metres(), EXACT);
	}

	@Test
	void everyElementKnowsHowFarAlongTheWalkItStarts() {
		BackboneLength length = length(backbone(terminator("a"), run(5, LIGHT), tee("bow"), run(40, HEAVY), tee("stern"), terminator("b")));
		assertEquals(List.of(0.0, 0.0, 5.0, 5.0, 45.0, 45.0), length.positions().stream().map(Length::metres).toList());
	}

	@Test
	void whatNobodySaysCannotBeExceeded() {
		BackboneLength length = BackboneLength.of(backbone(terminator("a"), terminator("b")), List.of(), DropLength::of);
		assertTrue(length.longerOfAllowance().isEmpty());
	}

	@Test
	void terminatorsAreFoundAtTheEndsOnly() {
		Termination both = Termination.of(backbone(terminator("a"), run(1, LIGHT), terminator("b")), List.of(), List.of());
		assertTrue(both.start().isPresent() && both.end().isPresent());
		Termination misplaced = Termination.of(backbone(terminator("a"), terminator("b"), run(1, LIGHT)), List.of(), List.of());
		assertTrue(misplaced.start().isPresent() && misplaced.end().isEmpty());
		assertEquals(List.of(Where.AT_END, Where.BETWEEN), places(backbone(terminator("a"), terminator("b"), run(1, LIGHT))));
		Termination single = Termination.of(backbone(terminator("a")), List.of(), List.of());
		assertTrue(single.start().isPresent() && single.end().isEmpty());
	}

	/** Common practice: some power cords bring a terminator; one plugged in anywhere but at an end closes no end. */
	@Test
	void aCordWithATerminatorClosesTheEndThatItIsPluggedInto() {
		Backbone walk = backbone(tee("first"), run(5, LIGHT), tee("middle"), run(10, LIGHT), terminator("end"));
		Termination atTheEnd = Termination.of(walk, List.of(), List.of(Lines.terminatedFeed("first")));
		assertEquals("first", atTheEnd.start().orElseThrow().name());
		assertEquals(List.of(Where.AT_END, Where.AT_END), places(walk, Lines.terminatedFeed("first")));
		Termination inTheMiddle = Termination.of(walk, List.of(), List.of(Lines.terminatedFeed("middle")));
		assertTrue(inTheMiddle.start().isEmpty());
		assertEquals(List.of(Where.AT_END, Where.BUILT_IN), places(walk, Lines.terminatedFeed("middle")));
		assertEquals(List.of(Where.AT_END, Where.AT_END, Where.BUILT_IN), places(walk, Lines.terminatedFeed("first"), Lines.terminatedFeed("first")),
				"a second cord at the same part closes nothing");
	}

	private static List<Where> places(Backbone walk, Feed... feeds) {
		Network network = new Network("bus", NetworkKind.INSTRUMENT_BUS, List.of(walk), List.of(), List.of(feeds), List.of(), List.of(), Origin.nowhere("bus"));
		return TerminatorPlace.of(network, walk).stream().map(TerminatorPlace::where).toList();
	}
}

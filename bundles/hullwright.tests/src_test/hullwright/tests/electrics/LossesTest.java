/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.electrics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hullwright.analysis.fault.Loss;
import hullwright.analysis.fault.Losses;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What is lost when one thing fails, told by hand for small boats: all of it, so that nothing is lost too much or too little.
 */
class LossesTest {

	private static List<String> losses(String series) {
		ComputedBoat boat = ComputedBoat.with(series);
		return Losses.of(boat.boat(), boat.wiring()).stream().map(LossesTest::told).toList();
	}

	private static String told(Loss loss) {
		StringBuilder text = new StringBuilder(loss.what() + " " + loss.element() + loss.other().map(other -> " to " + other).orElse("")
				+ loss.side().map(side -> " " + side).orElse("") + ":");
		append(text, "power", loss.withoutPower());
		append(text, "data", loss.withoutData());
		append(text, "unterminated", loss.unterminated());
		append(text, "parted", loss.parted());
		return text.toString().replace("trial.", "").replace("net.", "");
	}

	private static void append(StringBuilder text, String what, List<String> names) {
		if (!names.isEmpty()) {
			text.append(' ').append(what).append(' ').append(String.join(" ", names));
		}
	}

	/** One device to the left of the tap and two to the right. */
	@Test
	void aNetworkFedInTheMiddle() {
		assertEquals(List.of(
				"SOURCE service: power a b c",
				"SUPPLY house: power a b c",
				"JOINT l to t1: unterminated net",
				"JOINT t1 to west: power a data a unterminated net",
				"CABLE west: power a data a unterminated net",
				"JOINT west to mid: power a data a unterminated net",
				"FUSE mid TOWARDS_START: power a",
				"FUSE mid TOWARDS_END: power b c",
				"JOINT mid to east: power b c data a unterminated net",
				"CABLE east: power b c data a unterminated net",
				"JOINT east to t2: power b c data a unterminated net",
				"JOINT t2 to r: unterminated net",
				"JOINT t1 to a.leg-1: power a data a",
				"CABLE a.leg-1: power a data a",
				"JOINT a.leg-1 to a: power a data a",
				"JOINT t2 to b: power b data b",
				"JOINT t2 to c: power c data c"), losses("""
				bank service { 12 V }
				supply house { from service }
				network net of kind instrument bus {
					backbone of tenth {
						terminator l : endMale
						tee t1 : tee1
						cable west 5 m
						tap mid : fused from house
						cable east 5 m
						tee t2 : tee4
						terminator r : endFemale
					}
					drop t1.1 via 1 m to a : amp
					drop t2.1 to b : amp
					drop t2.2 to c : amp
				}
				"""));
	}

	/** Fed from both ends, one supply stands in for the other; a cut in the middle takes nobody's power. */
	@Test
	void aNetworkFedFromBothEnds() {
		List<String> losses = losses("""
				bank service { 12 V }
				bank other { 12 V }
				supply left { from service }
				supply right { from other }
				network net of kind instrument bus {
					backbone of tenth {
						terminator l : endMale
						tap start : inlet from left
						cable west 5 m
						tee t1 : tee4
						cable east 5 m
						tap end : inlet from right
						terminator r : endFemale
					}
					drop t1.1 to a : amp
				}
				""");

		assertEquals(List.of(), losses.stream().filter(each -> each.startsWith("SOURCE") || each.startsWith("SUPPLY")).toList());
		assertEquals(List.of("CABLE west: unterminated net", "CABLE east: unterminated net"), losses.stream().filter(each -> each.startsWith("CABLE")).toList());
	}

	/** A tap that breaks the supply and has one for each side: each supply is alone on its side. */
	@Test
	void eachSideOfASplitTapHasItsOwnSupply() {
		List<String> losses = losses("""
				bank service { 12 V }
				supply left { from service }
				supply right { from service }
				network net of kind instrument bus {
					backbone of tenth { tee t1 : tee1 tap mid : split from left, right tee t2 : tee1 }
					drop t1.1 to a : amp
					drop t2.1 to b : amp
				}
				""");

		assertEquals(List.of("SOURCE service: power a b", "SUPPLY left: power a", "SUPPLY right: power b"),
				losses.stream().filter(each -> each.startsWith("SOURCE") || each.startsWith("SUPPLY")).toList());
	}

	/** A cord through a port of a tee feeds all; its fuse, its wires and its plug are one after the other. */
	@Test
	void aNetworkFedThroughAPort() {
		List<String> losses = losses("""
				supply house { 12 V }
				network net of kind instrument bus {
					backbone of tenth { tee t1 : tee4 cable east 5 m tee t2 : tee4 }
					feed entry : t1.4 via fusedTail from house
					drop t1.1 to a : amp
					drop t2.1 to b : amp
				}
				""");

		assertEquals(List.of("SUPPLY house: power a b", "FUSE entry.leg-1: power a b"),
				losses.stream().filter(each -> each.startsWith("SUPPLY") || each.startsWith("FUSE")).toList());
		assertEquals(List.of("CABLE east: power b data b", "CABLE entry.leg-1: power a b"), losses.stream().filter(each -> each.startsWith("CABLE")).toList());
	}

	/** A second way round keeps everything alive when one of both is cut. */
	@Test
	void aLoopLosesNothingByOneCut() {
		List<String> losses = losses("""
				supply house { 12 V }
				network net of kind instrument bus {
					backbone of tenth { tap start : inlet from house cable west 5 m tee t1 : tee4 cable east 5 m tee t2 : tee4 }
					drop t2.1 to a : amp
					join t1.2 via 3 m to t2.2
				}
				""");

		assertEquals(List.of("CABLE west: power a"), losses.stream().filter(each -> each.startsWith("CABLE")).toList(),
				"no cable of the loop loses anything; the tap has no device behind it that could lose the data");
	}

	@Test
	void aBridgePartsItsNetworks() {
		List<String> losses = losses("""
				supply house { 12 V }
				network net of kind instrument bus {
					backbone of tenth { tap start : inlet from house tee t1 : tee4 }
					drop t1.1 to a : amp
					drop t1.2 to joint.a
				}
				network engines of kind engine bus {
					backbone of tenth { tap start : inlet from house tee t1 : tee4 }
					drop t1.1 to b : amp
					drop t1.2 to joint.b
				}
				device joint : link
				""");

		assertEquals(List.of("BRIDGE joint: parted net engines"), losses.stream().filter(each -> each.startsWith("BRIDGE")).toList());
	}
}

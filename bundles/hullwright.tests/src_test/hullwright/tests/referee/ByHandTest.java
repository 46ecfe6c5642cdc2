/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.referee;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hullwright.tests.referee.DescribedBoat.Bank;
import hullwright.tests.referee.DescribedBoat.Corner;
import hullwright.tests.referee.DescribedBoat.Device;
import hullwright.tests.referee.DescribedBoat.Drop;
import hullwright.tests.referee.DescribedBoat.Feed;
import hullwright.tests.referee.DescribedBoat.Fitted;
import hullwright.tests.referee.DescribedBoat.Item;
import hullwright.tests.referee.DescribedBoat.Net;
import hullwright.tests.referee.DescribedBoat.PortAt;
import hullwright.tests.referee.DescribedBoat.Run;
import hullwright.tests.referee.DescribedBoat.Shape;
import hullwright.tests.referee.DescribedBoat.Supply;
import hullwright.tests.referee.DescribedBoat.Volts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Small boats that can be computed by hand: the referee must be right about them, and so must we.
 */
class ByHandTest {

	private static final double EXACT = 1e-9;

	private static final double FOOT = 0.3048;

	/**
	 * DeviceNet media design and installation guide, DNET-UM072C-EN-P, p. 4-21 and 4-22: a thick trunk fed at one end, 0.0045 ohm/ft
	 * and 5 mohm for each tap; 1 A at 50 ft, 0.5 A at 100 ft, 0.5 A at 400 ft and 0.25 A at 800 ft. Printed is the loss in one
	 * conductor, 0.23 + 0.23 + 0.91 + 0.91 = 2.28 V; unrounded 0.2300 + 0.2300 + 0.9075 + 0.9050 = 2.2725 V. Here each tap has two
	 * contacts of 2.5 mohm, and one more leads to its device.
	 */
	@Test
	void thePublishedExampleOfAFullCalculation() {
		PartKind.Family family = new PartKind.Family("roundLock", Optional.of(0.0025));
		PartKind.Cable thick = new PartKind.Cable("thick", Optional.of(family), Optional.of(new PartKind.Wire(15, 0, Optional.of(0.0045 / FOOT))));
		double[] feet = { 50, 50, 300, 400 };
		double[] amperes = { 1, 0.5, 0.5, 0.25 };
		List<Item> items = new ArrayList<>();
		List<Drop> drops = new ArrayList<>();
		List<Device> devices = new ArrayList<>();
		items.add(new Fitted("entry", new PartKind.Tap("entryTap", family, PartKind.Tap.Feeds.BOTH, false, Optional.empty()), List.of("supply1"), Optional.empty()));
		for (int at = 0; at < feet.length; at++) {
			items.add(new Run("run" + at, thick, Math.round(feet[at] * FOOT * 100) / 100.0));
			items.add(Fitted.of("tee" + at, new PartKind.Tee("roundTee", family, family, 1)));
			drops.add(new Drop(new PortAt("tee" + at, 1, family), List.of(), "device" + at, Optional.empty()));
			devices.add(device("device" + at, family, amperes[at]));
		}
		Comparison comparison = compare(new Net("instruments", false, items, drops, List.of(), List.of()), devices);
		double loss = 0.23 + 0.23 + 0.9075 + 0.905;
		assertEquals(2.28, loss, 0.01, "as printed, each term rounded");
		assertBoth(loss + 0.25 * 0.0025, "return at device3", comparison);
		assertBoth(24 - 2 * (loss + 0.25 * 0.0025), "voltage across device3", comparison);
	}

	/** Where two families meet, the contact that resists more counts, and one that states nothing counts 5 mohm. */
	@Test
	void ofTwoFamiliesTheOneThatResistsMoreCounts() {
		PartKind.Family stated = new PartKind.Family("roundLock", Optional.of(0.003));
		PartKind.Family silent = new PartKind.Family("clipLock", Optional.empty());
		List<Item> items = List.of(
				new Fitted("entry", new PartKind.Tap("entryTap", stated, PartKind.Tap.Feeds.BOTH, false, Optional.empty()), List.of("supply1"), Optional.empty()),
				Fitted.of("tee", new PartKind.Tee("roundTee", stated, stated, 1)));
		Comparison comparison = compare(new Net("instruments", false, items, List.of(new Drop(new PortAt("tee", 1, stated), List.of(), "device", Optional.empty())),
				List.of(), List.of()), List.of(device("device", silent, 2)));
		assertBoth(2 * (0.003 + 0.005), "return at device", comparison);
	}

	/** The bare end of a cord is wired to what follows, without a contact. 1 m at 10 mohm/m, then 2 m at 20 mohm/m. */
	@Test
	void theBareEndOfACordHasNoContact() {
		PartKind.Family family = new PartKind.Family("roundLock", Optional.of(0.003));
		PartKind.Cord cord = new PartKind.Cord("roundCord", family, 1, Optional.of(new PartKind.Wire(18, 0, Optional.of(0.010))), Optional.empty());
		PartKind.Cable reel = new PartKind.Cable("reelCable", Optional.empty(), Optional.of(new PartKind.Wire(20, 0, Optional.of(0.020))));
		List<Item> items = List.of(Fitted.of("tee", new PartKind.Tee("roundTee", family, family, 2)));
		Comparison comparison = compare(new Net("instruments", false, items, List.of(new Drop(new PortAt("tee", 1, family), List.of(), "device", Optional.empty())),
				List.of(new Feed("feed", new PortAt("tee", 2, family), List.of(Fitted.of("", cord), new Run("", reel, 2)), List.of("supply1"))), List.of()),
				List.of(device("device", family, 2)));
		assertBoth(2 * (0.003 + 0.003 + 0.010 + 0.040), "return at device", comparison);
	}

	private static Device device(String name, PartKind.Family family, double amperes) {
		LoadData load = new LoadData(new LoadData.Amount(amperes, LoadData.Unit.AMPERE), LoadData.Behaviour.CONSTANT_CURRENT, true, Optional.empty(), Optional.empty(),
				Optional.empty());
		return new Device(name, new PartKind.DeviceKind(name + "Kind", Optional.empty(), Optional.empty(), List.of(new PartKind.DeviceKind.Port("bus", family)), false,
				Optional.empty(), Optional.of(load)), List.of());
	}

	/** A boat with one bank of 24 V, one supply without resistance, and this network. */
	private static Comparison compare(Net net, List<Device> devices) {
		Bank bank = new Bank("bank1", new Volts(Optional.empty(), Optional.of(24.0), Optional.empty()), Optional.empty());
		Supply supply = new Supply("supply1", Optional.of("bank1"), Optional.empty(), List.of(), Optional.empty(), Optional.empty());
		return Comparison.of(List.of(new DescribedBoat(0, Shape.TREE, LoadData.Behaviour.CONSTANT_CURRENT, List.of(bank, supply), List.of(), Optional.empty(),
				Corner.NOMINAL, List.of(net), devices))).get(0);
	}

	private static void assertBoth(double expected, String what, Comparison comparison) {
		assertEquals(expected, comparison.ngspice().get(what), EXACT, () -> "ngspice: " + what + " of\n" + comparison.netlist().text());
		assertEquals(expected, comparison.ours().get(what), EXACT, () -> "Hullwright: " + what + " of\n" + HullText.of(comparison.boat()));
	}
}

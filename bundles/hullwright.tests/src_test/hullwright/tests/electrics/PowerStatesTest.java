/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.electrics;

import static hullwright.tests.electrics.ComputedBoat.drop;
import static hullwright.tests.electrics.ComputedBoat.reading;
import static hullwright.tests.electrics.ComputedBoat.volts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import hullwright.analysis.power.Conditions;
import hullwright.analysis.power.PowerFlow;
import hullwright.analysis.power.SourceReading;
import hullwright.network.power.PowerState;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Switches, and banks that dip while an engine is started.
 */
class PowerStatesTest {

	private static final double EXACT = 1e-9;

	/** Two networks on two banks; the second by way of a converter. */
	private static final String TWO_BANKS = """
			switch mainSwitch
			switch panel
			bank starting { 12 V, lowest 11 V, highest 14.4 V; internal resistance 10 mohm; starts engines }
			bank service { 24 V, lowest 22 V, highest 28.8 V; internal resistance 100 mohm }
			converter toTwelve { from service; 13.8 V; isolated; efficiency 80 % }
			supply engineSide { from starting; switch mainSwitch }
			supply house { from toTwelve; switch mainSwitch and panel }
			state keyOff { }
			state half { on mainSwitch }
			state running { on mainSwitch and panel }
			state cranking { on mainSwitch and panel; starting dips to 9.5 V for 2 s }
			state oldCells { on mainSwitch and panel; service dips to 18 V }
			network engines of kind engine bus {
				backbone of tenth { tap start : inlet from engineSide cable 5 m tee t1 : tee1 }
				drop t1.1 to a : amp
			}
			network bridge of kind instrument bus {
				backbone of tenth { tap start : inlet from house cable 5 m tee t1 : tee1 }
				drop t1.1 to b : amp
			}
			""";

	private final ComputedBoat boat = ComputedBoat.with(TWO_BANKS);

	/** 1 A over 10 mohm of the bank and 1 ohm of cable. */
	@Test
	void everythingIsOnWithoutAState() {
		assertEquals(12 - 0.01 - 1, volts(boat.nominal(), "engines.a"), EXACT);
		assertEquals(13.8 - 1, volts(boat.nominal(), "bridge.b"), EXACT);
		assertEquals(1, drop(boat.nominal(), "engines.a"), EXACT);
	}

	@Test
	void aSwitchThatIsOffLeavesItsNetworkDeadWithoutAProblem() {
		PowerFlow off = boat.nominal("keyOff");

		assertEquals(List.of(), off.problems());
		for (String device : List.of("engines.a", "bridge.b")) {
			assertFalse(reading(off, device).fed(), device);
			assertEquals(0, reading(off, device).current().amperes(), device);
		}
	}

	@Test
	void bothSwitchesInARowMustBeOn() {
		PowerFlow half = boat.nominal("half");

		assertEquals(List.of(), half.problems());
		assertEquals(12 - 1.01, volts(half, "engines.a"), EXACT);
		assertFalse(reading(half, "bridge.b").fed());
		assertEquals(volts(boat.nominal(), "bridge.b"), volts(boat.nominal("running"), "bridge.b"), EXACT);
	}

	@Test
	void aDipWhileCrankingLowersWhatHangsOnThatBankAndNothingElse() {
		PowerFlow running = boat.nominal("running");
		PowerFlow cranking = boat.nominal("cranking");

		assertEquals(volts(running, "engines.a") - 2.5, volts(cranking, "engines.a"), EXACT);
		assertEquals(volts(running, "bridge.b"), volts(cranking, "bridge.b"), EXACT);
	}

	@Test
	void aDipHoldsHoweverFullTheBankIs() {
		Optional<PowerState> cranking = Optional.of(boat.state("cranking"));

		assertEquals(volts(boat.nominal("cranking"), "engines.a"), 8.49, EXACT);
		assertEquals(9.5, source(boat.at(Conditions.highest(cranking)), "starting").voltage().volts(), EXACT);
		assertEquals(9.5, source(boat.at(Conditions.lowest(cranking)), "starting").voltage().volts(), EXACT);
	}

	/** Ideal at its output, a converter holds its voltage; it draws more current from a bank that dips. */
	@Test
	void aConverterDrawsTheMoreTheLowerItsBank() {
		SourceReading usual = source(boat.nominal("running"), "toTwelve");
		SourceReading dipped = source(boat.nominal("oldCells"), "toTwelve");

		assertEquals(volts(boat.nominal("running"), "bridge.b"), volts(boat.nominal("oldCells"), "bridge.b"), EXACT);
		assertEquals(13.8 / 0.8, usual.input().orElseThrow().power().watts(), EXACT);
		assertEquals(13.8 / 0.8, dipped.input().orElseThrow().power().watts(), EXACT);
		assertEquals(bankCurrent(24), source(boat.nominal("running"), "service").current().amperes(), EXACT);
		assertEquals(bankCurrent(18), source(boat.nominal("oldCells"), "service").current().amperes(), EXACT);
	}

	/** 17.25 W behind 0.1 ohm: E · I - R · I² = P, the smaller of both currents. */
	private static double bankCurrent(double volts) {
		return (volts - Math.sqrt(volts * volts - 4 * 0.1 * 13.8 / 0.8)) / (2 * 0.1);
	}

	/** 300 A from the first of its own feeds that is on: from the starting bank, and by night from the service bank. */
	@Test
	void aDeviceTakesTheFirstOfItsOwnFeedsThatIsOn() {
		ComputedBoat boat = ComputedBoat.with("""
				switch day
				switch night
				bank starting { 12 V }
				bank service { 12 V }
				supply first { from starting; switch day }
				supply second { from service; switch night }
				state byDay { on day and night }
				state byNight { on night }
				state dark { }
				device bow : thruster { from first from second }
				""");

		assertEquals(List.of(300.0, 0.0), currents(boat.nominal("byDay")));
		assertEquals(List.of(0.0, 300.0), currents(boat.nominal("byNight")));
		assertEquals(List.of(0.0, 0.0), currents(boat.nominal("dark")));
	}

	private static List<Double> currents(PowerFlow flow) {
		return flow.sources().stream().map(each -> each.current().amperes()).toList();
	}

	private static SourceReading source(PowerFlow flow, String name) {
		return flow.sources().stream().filter(each -> each.source().endsWith("." + name)).findFirst().orElseThrow();
	}

	@Test
	void lowestAndHighestBank() {
		assertEquals(11, source(boat.at(Conditions.lowest(Optional.empty())), "starting").voltage().volts());
		assertEquals(14.4, source(boat.at(Conditions.highest(Optional.empty())), "starting").voltage().volts());
		assertEquals(12, source(boat.nominal(), "starting").voltage().volts());
	}
}

/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.electrics;

import static hullwright.tests.electrics.ComputedBoat.reading;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.analysis.power.Assumption;
import hullwright.analysis.power.Conditions;
import hullwright.analysis.power.LoadLevel;
import hullwright.analysis.power.PowerFlow;
import hullwright.analysis.power.SectionReading;
import hullwright.analysis.power.SourceReading;
import hullwright.analysis.power.SpanReading;
import hullwright.analysis.power.TapPlace;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * What is read off a solved circuit, by hand for one small boat: margins, currents in cables, contacts and fuses, sections, the
 * best place of a tap, and what was assumed.
 */
class ReadingsTest {

	private static final double EXACT = 1e-9;

	/** 0.15 V at 3 A: each side fuse has 0.05 ohm. */
	private static final String BOAT = """
			bank service { 12 V; internal resistance 50 mohm }
			supply house { from service; fuse 10 A of glass }
			network net of kind instrument bus {
				backbone of tenth { tee t1 : tee1 cable west 5 m tap mid : fused from house cable east 10 m tee t2 : tee4 }
				drop t1.1 to a : amp
				drop t2.1 to b : amp
				drop t2.2 to c : amp
			}
			""";

	private final PowerFlow flow = ComputedBoat.with(BOAT).nominal();

	private SpanReading span(String name) {
		return flow.spans().stream().filter(each -> each.span().element().equals("trial.net." + name) && each.rated().isPresent()
				&& each.span().other().isEmpty()).findFirst().orElseThrow();
	}

	/** 3 A from the bank over 0.05 ohm and 0.015 ohm of the breaker; 2 A of them over the fuse and 10 m each way. */
	@Test
	void aDeviceKnowsItsVoltageItsDropAndItsMargins() {
		double entry = 12 - 3 * 0.065;
		double atDevice = entry - 2 * 0.05 - 2 * 2.0;

		assertEquals(atDevice, reading(flow, "net.b").voltage().volts(), EXACT);
		assertEquals(4.1, reading(flow, "net.b").drop().orElseThrow().volts(), EXACT);
		assertEquals(atDevice - 9, reading(flow, "net.b").aboveLowest().orElseThrow().volts(), EXACT);
		assertEquals(16 - atDevice, reading(flow, "net.b").belowHighest().orElseThrow().volts(), EXACT);
		assertTrue(reading(flow, "net.b").aboveLowest().orElseThrow().volts() < 0, "below its 9 V");
	}

	@Test
	void theCurrentsOfCables() {
		assertEquals(-1, span("west").supply().amperes(), EXACT, "against the direction of the text");
		assertEquals(1, span("west").back().amperes(), EXACT);
		assertEquals(2, span("east").supply().amperes(), EXACT);
		assertEquals(2 / 3.0, span("east").used().orElseThrow(), EXACT, "of its 3 A");
	}

	@Test
	void theCurrentsOfContactsAreMeasuredAgainstTheirFamily() {
		SpanReading contact = flow.spans().stream().filter(each -> each.span().element().equals("trial.net.east") && each.span().other().isPresent())
				.findFirst().orElseThrow();
		assertEquals(2 / 4.0, contact.used().orElseThrow(), EXACT);
	}

	@Test
	void theCurrentsOfFuses() {
		assertEquals(List.of("trial.house 3.0", "trial.net.mid 1.0", "trial.net.mid 2.0"), flow.fuses().stream()
				.map(each -> each.owner() + " " + Math.round(each.current().amperes() * 1e6) / 1e6).toList());
	}

	@Test
	void aSectionKnowsItsWeakestDevice() {
		SectionReading section = flow.sections().get(0);

		assertEquals(1, flow.sections().size());
		assertEquals(3, section.current().amperes(), EXACT);
		assertEquals(Optional.of("trial.net.b"), section.weakest());
		assertEquals(4.1, section.drop().orElseThrow().volts(), EXACT);
		assertEquals(1, section.feeding());
	}

	@Test
	void theBankGivesAllOfIt() {
		SourceReading bank = flow.sources().get(0);

		assertEquals("trial.service", bank.source());
		assertEquals(3, bank.current().amperes(), EXACT);
		assertEquals(Optional.empty(), bank.input());
	}

	/** At t2 only the 1 A of a has a way to go: 15 m each way, 3 V, where now 2 A lose 4 V. At t1 it would be 6 V. */
	@Test
	void theBestPlaceOfTheTap() {
		TapPlace place = ComputedBoat.with(BOAT).circuit(Optional.empty()).tapPlaces(flow).get(0);

		assertEquals("trial.net.mid", place.present());
		assertEquals("trial.net.t2", place.best());
		assertEquals(4, place.lossNow().volts(), EXACT);
		assertEquals(3, place.lossThere().volts(), EXACT);
		assertEquals(1, place.gain().volts(), EXACT);
		PowerFlow moved = ComputedBoat.with(BOAT.replace("tap mid : fused from house cable east 10 m tee t2 : tee4",
				"cable east 10 m tee t2 : tee4 tap mid : fused from house")).nominal();
		assertEquals(3 + 3 * 0.05, reading(moved, "net.a").drop().orElseThrow().volts(), EXACT, "moved there, with all 3 A over the fuse of that side");
	}

	/** At most and starting loads; what a text leaves out is told once for each kind. */
	@Test
	void loadsAtEachLevel() {
		ComputedBoat boat = ComputedBoat.of("""
				catalog Levels "Invented" {
					family plain { standard; contact 0 mohm }
					family silent { standard }
					cable unknown { signal 24 AWG }
					tap inlet { backbone plain male, plain female; feeds both sides }
					tee tee4 { backbone plain male, plain female; ports 1..2 : plain female; port 3 : silent female }
					device pump { port bus : plain male; load 6 W constant current, at most 12 W, starts with 24 W for 1 s }
					device clock { port bus : silent male; load 0.1 A constant current }
				}
				series trial {
					bank service { 12 V }
					supply house { from service; fuse 5 A }
					network net of kind instrument bus {
						backbone of unknown { tap start : inlet from house cable 1 m tee t1 : tee4 }
						drop t1.1 to p : pump
						drop t1.3 to c : clock
					}
				}
				""");

		assertEquals(0.5, drawn(boat, LoadLevel.NOMINAL), EXACT, "6 W at the 12 V that are assumed");
		assertEquals(1, drawn(boat, LoadLevel.GUARANTEED), EXACT);
		assertEquals(2, drawn(boat, LoadLevel.STARTING), EXACT);
		assertEquals(List.of(
				new Assumption(Assumption.Kind.CONTACT_RESISTANCE, List.of("silent")),
				new Assumption(Assumption.Kind.CONDUCTOR, List.of("trial.net.start-to-t1")),
				new Assumption(Assumption.Kind.FUSE_RESISTANCE, List.of("trial.house")),
				new Assumption(Assumption.Kind.BANK_RESISTANCE, List.of("trial.service")),
				new Assumption(Assumption.Kind.LEAD, List.of("trial.house")),
				new Assumption(Assumption.Kind.REFERENCE_VOLTAGE, List.of("trial.net.p")),
				new Assumption(Assumption.Kind.GUARANTEED_LOAD, List.of("trial.net.c"))), boat.nominal().assumptions());
	}

	private static double drawn(ComputedBoat boat, LoadLevel level) {
		Conditions usual = Conditions.nominal(Optional.empty());
		return reading(boat.at(new Conditions(usual.banks(), level, usual.conductors(), Optional.empty())), "net.p").current().amperes();
	}
}

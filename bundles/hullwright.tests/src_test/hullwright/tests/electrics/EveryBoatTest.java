/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.electrics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import hullwright.analysis.electrics.BoatElectrics;
import hullwright.analysis.electrics.StateElectrics;
import hullwright.analysis.fault.ShortCircuits;
import hullwright.analysis.power.DeviceReading;
import hullwright.analysis.power.PowerFlow;
import hullwright.analysis.power.SectionReading;
import hullwright.analysis.power.SpanReading;
import hullwright.analysis.wiring.AttachedDevice;
import hullwright.analysis.wiring.Wiring;
import hullwright.check.BoatsRead;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.network.Boat;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * What must hold for the electrics of every boat: those of all example projects and of the trial boats, with every combination
 * of options and every hull.
 */
class EveryBoatTest {

	private static final Path EXAMPLES = Path.of("..", "hullwright.examples", "examples");
	private static final Path TRIALS = Path.of("src_test", "hullwright", "tests", "catalog");

	private static final List<String> GOOD = List.of("first-power-up", "day-boat", "harbour-pilot", "twin-cruiser", "motor-yacht");

	private static final Checker CHECKER = Checker.create();

	private static List<Boat> boats(Snapshot snapshot) {
		BoatsRead read = CHECKER.boats(CheckRequest.ofAll(snapshot, LocalDate.of(2030, 1, 1)));
		assertEquals(List.of(), read.gaps());
		return read.boats();
	}

	@TestFactory
	Stream<DynamicTest> ofTheGoodExamples() {
		return GOOD.stream().map(name -> dynamicTest(name, () -> {
			for (Boat boat : boats(Snapshot.ofFolder(EXAMPLES.resolve(name)))) {
				BoatElectrics electrics = sound(boat);
				flows(electrics).forEach(flow -> assertEquals(List.of(), flow.problems(), boat.selection() + ""));
			}
		}));
	}

	@TestFactory
	Stream<DynamicTest> ofTheFaultyExample() {
		return Stream.of(dynamicTest("faulty", () -> boats(Snapshot.ofFolder(EXAMPLES.resolve("faulty"))).forEach(EveryBoatTest::sound)));
	}

	@TestFactory
	Stream<DynamicTest> ofTheTrialBoats() throws IOException {
		try (Stream<Path> files = Files.list(TRIALS)) {
			return files.filter(file -> file.toString().endsWith(".hull")).sorted().toList().stream()
					.map(file -> dynamicTest(file.getFileName().toString(), () -> {
						List<Boat> boats = boats(Snapshot.of(Map.of(file.getFileName().toString(), Files.readString(file))));
						assertTrue(!boats.isEmpty(), "boats were read");
						for (Boat boat : boats) {
							flows(sound(boat)).forEach(flow -> assertEquals(List.of(), flow.problems(), boat.selection() + ""));
						}
					}));
		}
	}

	/** The electrics of a boat, after all has been looked at that must hold for any. */
	private static BoatElectrics sound(Boat boat) {
		BoatElectrics electrics = BoatElectrics.of(boat);
		assertEquals(List.of(), EveryNumber.notFiniteIn(electrics), "no NaN, no infinity");
		assertTrue(electrics.equals(BoatElectrics.of(boat)), "computed again, it is the same");
		electrics.states().forEach(state -> assertEquals(state.lowest().fuses().stream().map(each -> each.owner() + each.side()).toList(),
				state.breaking().stream().map(each -> each.owner() + each.side()).toList(), "every fuse that is fed has its breaking current"));
		for (PowerFlow flow : flows(electrics)) {
			supplyCurrentsBalance(electrics.wiring(), flow);
			returnCurrentsBalance(electrics.wiring(), flow);
			dropsAreConsistent(flow);
			assertTrue(flow.devices().stream().allMatch(each -> each.fed() || each.current().amperes() == 0), "what is not fed draws nothing");
		}
		statesAreThoseComputedAlone(boat, electrics);
		return electrics;
	}

	private static List<PowerFlow> flows(BoatElectrics electrics) {
		return electrics.states().stream().flatMap(each -> Stream.of(each.nominal(), each.lowest(), each.highest(), each.starting())).toList();
	}

	/** Kirchhoff's law for the supply conductor at every point: what comes by spans and entries goes by spans and devices. */
	private static void supplyCurrentsBalance(Wiring wiring, PowerFlow flow) {
		double[] leaving = new double[wiring.points()];
		for (SpanReading each : flow.spans()) {
			leaving[each.span().from()] += each.supply().amperes();
			leaving[each.span().to()] -= each.supply().amperes();
		}
		flow.entries().forEach(each -> leaving[each.entry().point()] -= each.current().amperes());
		for (DeviceReading each : flow.devices()) {
			leaving[pointOf(wiring, each)] += each.current().amperes();
		}
		for (int point = 0; point < leaving.length; point++) {
			assertEquals(0, leaving[point], 1e-9, "at point " + point);
		}
		double given = flow.entries().stream().mapToDouble(each -> each.current().amperes()).sum();
		assertEquals(flow.devices().stream().mapToDouble(each -> each.current().amperes()).sum(), given, 1e-9, "all that enters is drawn");
	}

	/** The same for the return; but for devices that join it to something else, by a supply of their own or by a second port. */
	private static void returnCurrentsBalance(Wiring wiring, PowerFlow flow) {
		double[] leaving = new double[wiring.points()];
		for (SpanReading each : flow.spans()) {
			leaving[each.span().from()] += each.back().amperes();
			leaving[each.span().to()] -= each.back().amperes();
		}
		flow.entries().forEach(each -> leaving[each.entry().point()] += each.back().amperes());
		for (DeviceReading each : flow.devices()) {
			leaving[pointOf(wiring, each)] -= each.current().amperes();
		}
		for (AttachedDevice each : wiring.devices()) {
			boolean second = wiring.devices().stream().filter(other -> other.device().name().equals(each.device().name())).count() > 1;
			boolean own = each.device().model().power().ownSupply().filter(supply -> !supply.isolated()).isPresent();
			if (second || own) {
				leaving[each.point()] = 0;
			}
		}
		for (int point = 0; point < leaving.length; point++) {
			assertEquals(0, leaving[point], 1e-9, "at point " + point);
		}
	}

	private static int pointOf(Wiring wiring, DeviceReading reading) {
		return wiring.devices().stream().filter(each -> each.device().name().equals(reading.device()) && each.branch().equals(reading.branch()))
				.mapToInt(AttachedDevice::point).findFirst().orElseThrow();
	}

	/** Voltage and drop add up to the highest at which a supply enters the section, and no device lies above that. */
	private static void dropsAreConsistent(PowerFlow flow) {
		Map<String, SectionReading> sectionOf = new HashMap<>();
		flow.sections().forEach(section -> section.devices().forEach(device -> sectionOf.put(device, section)));
		for (DeviceReading each : flow.devices()) {
			if (each.fed()) {
				SectionReading section = sectionOf.get(each.device());
				double highest = section.highest().orElseThrow().volts();
				assertEquals(highest, each.voltage().volts() + each.drop().orElseThrow().volts(), 1e-9, each.device());
				assertTrue(each.voltage().volts() >= section.lowest().orElseThrow().volts() - 1e-12, each.device());
				assertTrue(each.voltage().volts() > 0, each.device());
			}
		}
	}

	/** Computing one state after the other shares work between them; each must be what it is alone. */
	private static void statesAreThoseComputedAlone(Boat boat, BoatElectrics electrics) {
		ComputedBoat alone = ComputedBoat.of(boat);
		for (StateElectrics each : electrics.states()) {
			assertEquals(alone.circuit(each.state()).solve(each.lowest().conditions()), each.lowest());
			assertEquals(alone.circuit(each.state()).solve(each.nominal().conditions()), each.nominal());
			assertEquals(alone.circuit(each.state()).tapPlaces(each.lowest()), each.taps());
			assertEquals(ShortCircuits.of(boat, alone.wiring(), alone.circuit(each.state()), each.lowest().conditions()),
					each.shortCircuits());
		}
	}
}

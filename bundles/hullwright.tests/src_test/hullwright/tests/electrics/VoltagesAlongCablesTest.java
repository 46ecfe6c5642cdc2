/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.electrics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.analysis.Figures;
import hullwright.analysis.electrics.StateElectrics;
import hullwright.analysis.power.DeviceReading;
import hullwright.analysis.power.PowerFlow;
import hullwright.analysis.power.SpanReading;
import hullwright.analysis.wiring.Medium;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.network.Boat;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The voltages at both ends of each span, which the plot of the voltage along the backbone is made of, by the laws of Kirchhoff and
 * Ohm: one point has one voltage whichever span is asked, a device gets that of its point, and a cable loses voltage in the
 * direction of its current and none without.
 */
class VoltagesAlongCablesTest {

	private static final double ROUNDING = 1e-9;

	@ParameterizedTest
	@ValueSource(strings = { "first-power-up", "day-boat", "harbour-pilot", "twin-cruiser", "motor-yacht" })
	void aPointHasOneVoltageAndACurrentGoesDownhill(String example) throws Exception {
		int checked = 0;
		for (Boat boat : Checker.create().boats(CheckRequest.ofAll(Snapshot.ofFolder(Path.of("../hullwright.examples/examples", example)), LocalDate.EPOCH)).boats()) {
			Figures figures = new Figures(boat);
			for (StateElectrics state : figures.electrics().states()) {
				checked += check(figures, state.lowest());
			}
		}
		assertTrue(checked > 0, "some cable carries current");
	}

	private static int check(Figures figures, PowerFlow flow) {
		Map<Integer, Double> voltages = new HashMap<>();
		int carrying = 0;
		for (SpanReading reading : flow.spans()) {
			one(voltages, reading.span().from(), reading.start().volts(), reading);
			one(voltages, reading.span().to(), reading.end().volts(), reading);
			boolean bothWays = Math.signum(reading.supply().amperes()) == -Math.signum(reading.back().amperes());
			if (reading.span().medium() instanceof Medium.Conductors && Math.abs(reading.supply().amperes()) > 1e-6 && bothWays) {
				double lost = reading.start().volts() - reading.end().volts();
				assertEquals(Math.signum(reading.supply().amperes()), Math.signum(lost), () -> reading.span().element() + " loses " + lost + " V");
				carrying++;
			}
		}
		figures.electrics().wiring().devices().forEach(attached -> {
			DeviceReading device = flow.devices().stream().filter(each -> each.device().equals(attached.device().name()) && each.branch().equals(attached.branch()))
					.findFirst().orElse(null);
			if (device != null && device.fed() && voltages.containsKey(attached.point())) {
				assertEquals(voltages.get(attached.point()), device.voltage().volts(), ROUNDING, device.device());
			}
		});
		return carrying;
	}

	private static void one(Map<Integer, Double> voltages, int point, double volts, SpanReading reading) {
		Double before = voltages.putIfAbsent(point, volts);
		assertTrue(before == null || Math.abs(before - volts) < ROUNDING, () -> "point " + point + " of " + reading.span().element() + ": " + before + " and " + volts + " V");
	}
}

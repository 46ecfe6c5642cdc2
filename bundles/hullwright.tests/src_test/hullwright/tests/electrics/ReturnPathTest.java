/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.electrics;

import static hullwright.tests.electrics.ComputedBoat.shift;
import static hullwright.tests.electrics.ComputedBoat.volts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.analysis.conductor.CopperConductor;
import hullwright.analysis.power.Assumption;
import hullwright.analysis.power.EntryReading;
import hullwright.analysis.power.GroundShift;
import hullwright.analysis.power.PowerFlow;
import hullwright.quantity.CrossSection;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The return conductor is a circuit of its own: it has ways back that the supply conductor does not have. All by hand, from
 * the laws of Ohm and Kirchhoff.
 */
class ReturnPathTest {

	private static final double EXACT = 1e-9;

	/** 1 A, 4 m from the left supply, and 0.5 A, 10 m from the right one; an isolator between them. */
	private static final String ISOLATOR = """
			supply left { 12 V }
			%s
			network net of kind instrument bus {
				backbone of tenth {
					tap start : inlet from left
					cable 4 m
					tee t1 : tee1
					isolator divide : %s
					tee t2 : tee1
					cable 10 m
					tap end : inlet from right
				}
				drop t1.1 to a : amp
				drop t2.1 to b : halfAmp
			}
			""";

	/** 1.5 A flow back over 0.4 ohm and 1 ohm side by side: 3/7 V. */
	@Test
	void anIsolatorThatJoinsTheReturnsSharesTheirCurrent() {
		PowerFlow flow = ComputedBoat.with(ISOLATOR.formatted("supply right { 12 V }", "gap")).nominal();

		assertEquals(3.0 / 7, shift(flow, "net.a"), EXACT);
		assertEquals(3.0 / 7, shift(flow, "net.b"), EXACT);
		assertEquals(12 - 0.4 - 3.0 / 7, volts(flow, "net.a"), EXACT);
		assertEquals(12 - 0.5 - 3.0 / 7, volts(flow, "net.b"), EXACT);
		assertEquals(1, entry(flow, "left").current().amperes(), EXACT);
		assertEquals(1.5 * 1 / 1.4, entry(flow, "left").back().amperes(), EXACT, "more comes back than went out");
		assertEquals(1.5 * 0.4 / 1.4, entry(flow, "right").back().amperes(), EXACT);
	}

	@Test
	void anIsolatorThatPartsTheReturnsLeavesEachSideToItself() {
		PowerFlow flow = ComputedBoat.with(ISOLATOR.formatted("supply right { 12 V }", "wall")).nominal();

		assertEquals(0.4, shift(flow, "net.a"), EXACT);
		assertEquals(0.5, shift(flow, "net.b"), EXACT);
		assertEquals(12 - 0.8, volts(flow, "net.a"), EXACT);
		assertEquals(12 - 1.0, volts(flow, "net.b"), EXACT);
	}

	/** Behind an isolated converter there is no second way to the common negative: each current comes back where it went out. */
	@Test
	void anIsolatedConverterKeepsItsReturnToItself() {
		PowerFlow flow = ComputedBoat.with(ISOLATOR.formatted("""
				bank service { 24 V }
				converter toTwelve { from service; 12 V; isolated }
				supply right { from toTwelve }
				""", "gap")).nominal();

		assertEquals(0.4, shift(flow, "net.a"), EXACT);
		assertEquals(0.4, shift(flow, "net.b"), EXACT, "tied to the left side by the isolator");
		assertEquals(12 - 0.8, volts(flow, "net.a"), EXACT);
		assertEquals(12 - 1.0, volts(flow, "net.b"), EXACT);
	}

	/** The same without isolation: the converter's output minus is its input minus, so the returns share. */
	@Test
	void aConverterThatIsNotIsolatedSharesTheReturn() {
		PowerFlow flow = ComputedBoat.with(ISOLATOR.formatted("""
				bank service { 24 V }
				converter toTwelve { from service; 12 V }
				supply right { from toTwelve }
				""", "gap")).nominal();

		assertEquals(3.0 / 7, shift(flow, "net.a"), EXACT);
	}

	private static final String THRUSTER = """
			bank service { 12 V }
			supply house { from service; lead 2 m each way of 2.5 mm2 }
			supply strong { from service }
			network net of kind instrument bus {
				backbone of tenth { tap start : inlet from house cable 4 m tee t1 : tee1 cable 5 m tee t2 : tee1 }
				drop t1.1 via 2 m to bow : %s { from strong lead 6 m each way of 70 mm2 }
				drop t2.1 to far : %s
			}
			""";

	/** 6 m of 70 mm²: its minus wire alone. */
	private static final double THRUSTER_WIRE = 6 * CopperConductor.resistance(new CrossSection(70)).ohmsPerMetre();

	private static final double HOUSE_WIRE = 2 * CopperConductor.resistance(new CrossSection(2.5)).ohmsPerMetre();

	/** The way back through the network: 2 m of drop, 4 m of backbone, the lead of its supply. */
	private static final double THROUGH_NETWORK = 0.2 + 0.4 + HOUSE_WIRE;

	/** 300 A divide between the thruster's own minus and the network's return as their resistances say. */
	@Test
	void aThrusterThatIsNotIsolatedSendsPartOfItsCurrentThroughTheNetwork() {
		PowerFlow flow = ComputedBoat.with(THRUSTER.formatted("thruster", "idle")).nominal();
		double stray = 300 * THRUSTER_WIRE / (THRUSTER_WIRE + THROUGH_NETWORK);

		assertTrue(stray > 0.5, "enough to matter: " + stray + " A");
		assertEquals(stray, entry(flow, "house").back().amperes(), EXACT);
		assertEquals(0, entry(flow, "house").current().amperes(), EXACT);
		assertEquals(stray * THROUGH_NETWORK, shift(flow, "net.bow"), EXACT);
		assertEquals(stray * (0.4 + HOUSE_WIRE), shift(flow, "net.far"), EXACT, "beyond the thruster's tee no current flows");
	}

	/** Two cables from one supply to one thruster, one twice as long as the other: both count with their own length. */
	@Test
	void twoLeadsFromOneSupplyAreTwoLeads() {
		PowerFlow flow = ComputedBoat.with(THRUSTER.formatted("thruster", "idle")
				.replace("from strong lead 6 m each way of 70 mm2", "from strong lead 6 m each way of 70 mm2; from strong lead 12 m each way of 70 mm2"))
				.nominal();
		double wires = 1 / (1 / THRUSTER_WIRE + 1 / (2 * THRUSTER_WIRE));

		assertEquals(300 * wires / (wires + THROUGH_NETWORK), entry(flow, "house").back().amperes(), EXACT);
	}

	/** The lifted return takes its voltage from every other device. */
	@Test
	void theShiftOfTheReturnLowersTheVoltageOfTheOthers() {
		PowerFlow idle = ComputedBoat.with(THRUSTER.formatted("apartThruster", "amp")).nominal();
		PowerFlow running = ComputedBoat.with(THRUSTER.formatted("thruster", "amp")).nominal();
		double stray = 300 * THRUSTER_WIRE / (THRUSTER_WIRE + THROUGH_NETWORK);
		double relieved = (0.4 + HOUSE_WIRE) / (THRUSTER_WIRE + THROUGH_NETWORK);

		assertEquals(stray * (0.4 + HOUSE_WIRE) - relieved * (0.4 + HOUSE_WIRE), volts(idle, "net.far") - volts(running, "net.far"), EXACT,
				"a part of the 1 A comes back through the thruster's minus, which helps a little");
	}

	/** Without a length of its negative the shift cannot be told; that none is taken must be said. */
	@Test
	void aSecondNegativeOfUnknownLengthIsAnAssumption() {
		PowerFlow flow = ComputedBoat.with(THRUSTER.formatted("thruster", "idle").replace("lead 6 m each way of 70 mm2", "")).nominal();

		assertEquals(0, shift(flow, "net.bow"), EXACT);
		assertTrue(flow.assumptions().contains(new Assumption(Assumption.Kind.LEAD, List.of("trial.net.bow"))), flow.assumptions() + "");
	}

	@Test
	void anIsolatedThrusterShiftsNothing() {
		PowerFlow flow = ComputedBoat.with(THRUSTER.formatted("apartThruster", "idle")).nominal();

		assertEquals(0, shift(flow, "net.bow"), EXACT);
		assertEquals(0, shift(flow, "net.far"), EXACT);
		assertEquals(Optional.empty(), flow.shifts().get(0).worst());
	}

	@Test
	void theWorstPairOfReturnsIsTold() {
		PowerFlow flow = ComputedBoat.with(THRUSTER.formatted("thruster", "idle")).nominal();
		GroundShift.Pair worst = flow.shifts().get(0).worst().orElseThrow();

		assertEquals("trial.net.bow", worst.higher());
		assertEquals("trial.net.far", worst.lower());
		assertEquals(shift(flow, "net.bow") - shift(flow, "net.far"), worst.shift().volts(), EXACT);
	}

	private static final String TWO_NETWORKS = """
			supply left { 12 V }
			supply right { 12 V }
			network bridge of kind instrument bus {
				backbone of tenth { tap start : inlet from left cable 10 m tee t1 : tee4 }
				drop t1.1 to a : amp
				drop t1.2 to joint.a
			}
			network two of kind engine bus {
				backbone of tenth { tap start : inlet from right cable 5 m tee t1 : tee4 }
				drop t1.1 to joint.b
				drop t1.2 to b : idle
			}
			device joint : %s
			""";

	/** 1 A back over 1 ohm in one network and 0.5 ohm in the other: 1/3 V. */
	@Test
	void aBridgeWithOneReturnForBothPortsJoinsTheReturnsOfItsNetworks() {
		PowerFlow joined = ComputedBoat.with(TWO_NETWORKS.formatted("openLink")).nominal();
		PowerFlow isolated = ComputedBoat.with(TWO_NETWORKS.formatted("link")).nominal();

		assertEquals(1.0 / 3, shift(joined, "bridge.a"), EXACT);
		assertEquals(1.0 / 3, shift(joined, "two.b"), EXACT);
		assertEquals(1, shift(isolated, "bridge.a"), EXACT);
		assertEquals(0, shift(isolated, "two.b"), EXACT);
	}

	private static EntryReading entry(PowerFlow flow, String supply) {
		return flow.entries().stream().filter(each -> each.entry().supply().endsWith("." + supply)).findFirst().orElseThrow();
	}
}

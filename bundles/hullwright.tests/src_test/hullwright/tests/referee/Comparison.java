/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.referee;

import hullwright.testkit.BoatText;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What ngspice and our program say of one described boat, and where they differ most.
 *
 * @param boat the boat
 * @param netlist its netlist
 * @param answer what ngspice says, by node and source
 * @param ngspice what that means, by what was asked
 * @param ours what our program says, by the same names
 */
record Comparison(DescribedBoat boat, Netlist netlist, Map<String, Double> answer, Map<String, Double> ngspice, Map<String, Double> ours) {

	/** Voltages in V and currents in A of boats with linear loads agree within this. */
	static final double LINEAR = 1e-6;

	/** With loads of constant power, which both find by iteration, within this. */
	static final double CONSTANT_POWER = 1e-4;

	/** Compares boats; ngspice gets them all at once. */
	static List<Comparison> of(List<DescribedBoat> boats) {
		List<Netlist> netlists = boats.stream().map(BoatNetlist::of).toList();
		List<Map<String, Double>> answers = Ngspice.operatingPoints(netlists.stream().map(Netlist::text).toList());
		List<Comparison> comparisons = new ArrayList<>();
		for (int at = 0; at < boats.size(); at++) {
			comparisons.add(new Comparison(boats.get(at), netlists.get(at), answers.get(at), netlists.get(at).read(answers.get(at)), ours(boats.get(at))));
		}
		return comparisons;
	}

	private static Map<String, Double> ours(DescribedBoat boat) {
		try {
			return OurAnswer.of(BoatText.boat(HullText.of(boat)), boat);
		} catch (RuntimeException | AssertionError e) {
			throw new AssertionError(boat + " cannot be computed:\n" + HullText.of(boat), e);
		}
	}

	/** The same boat with an error planted in its netlist. */
	Comparison with(Netlist changed, Map<String, Double> changedAnswer) {
		return new Comparison(boat, changed, changedAnswer, changed.read(changedAnswer), ours);
	}

	double allowed() {
		return boat.behaviour() == LoadData.Behaviour.CONSTANT_POWER ? CONSTANT_POWER : LINEAR;
	}

	/** By how much each thing differs that ngspice was asked for; endlessly if our program does not say it. */
	Map<String, Double> differences() {
		Map<String, Double> differences = new HashMap<>();
		ngspice.forEach((what, value) -> differences.put(what, ours.containsKey(what) ? Math.abs(value - ours.get(what)) : Double.POSITIVE_INFINITY));
		return differences;
	}

	double largestDifference() {
		return differences().values().stream().mapToDouble(Double::doubleValue).max().orElseThrow();
	}

	boolean agrees() {
		return largestDifference() <= allowed();
	}

	/** All that is needed to look at it again. */
	String report() {
		StringBuilder report = new StringBuilder(boat + ": ngspice and Hullwright differ\n");
		differences().entrySet().stream().filter(entry -> entry.getValue() > allowed()).sorted(Map.Entry.<String, Double>comparingByValue().reversed())
				.forEach(entry -> report.append(entry.getKey()).append(": ngspice ").append(ngspice.get(entry.getKey()))
						.append(", Hullwright ").append(ours.get(entry.getKey())).append('\n'));
		return report.append('\n').append(HullText.of(boat)).append('\n').append(netlist.text()).toString();
	}
}

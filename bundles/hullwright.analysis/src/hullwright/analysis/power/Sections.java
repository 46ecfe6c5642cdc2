/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.Arrays;

import hullwright.analysis.wiring.JoinedPoints;
import hullwright.analysis.wiring.Span;
import hullwright.analysis.wiring.Wiring;

/**
 * Which points hang on one unbroken supply conductor.
 *
 * @param sectionOfPoint the number of the section of each point, from 0 in the order of the points
 * @param networkOfSection the number of the network of each section
 */
record Sections(int[] sectionOfPoint, int[] networkOfSection) {

	/** The sections of a wiring; a span conducts where it has a resistor in its supply conductor. */
	static Sections of(Wiring wiring, int[] supplyOfSpan) {
		JoinedPoints joined = JoinedPoints.of(wiring, span -> supplyOfSpan[span] >= 0);
		int[] network = new int[wiring.points()];
		for (Span span : wiring.spans()) {
			network[span.from()] = span.network();
			network[span.to()] = span.network();
		}
		int[] sectionOfPoint = new int[wiring.points()];
		int[] networkOfSection = new int[wiring.points()];
		int count = 0;
		for (int point = 0; point < network.length; point++) {
			int first = joined.first(point);
			if (first == point) {
				networkOfSection[count] = network[point];
				sectionOfPoint[point] = count++;
			} else {
				sectionOfPoint[point] = sectionOfPoint[first];
			}
		}
		return new Sections(sectionOfPoint, Arrays.copyOf(networkOfSection, count));
	}

	int count() {
		return networkOfSection.length;
	}

	int of(int point) {
		return sectionOfPoint[point];
	}

	int network(int section) {
		return networkOfSection[section];
	}
}

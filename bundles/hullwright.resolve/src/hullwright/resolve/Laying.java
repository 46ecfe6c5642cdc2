/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import hullwright.network.Element;
import hullwright.network.part.Connector;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Decides which way round each part of a run lies, so that as many joints as possible mate. A run that cannot mate
 * everywhere is laid with the fewest joints that do not; which those are, the rules say.
 */
final class Laying {

	/** Less than one joint: of two equally good ways, the one with fewer parts turned round is taken. */
	private static final double TURNED = 1e-6;

	private Laying() {
	}

	/**
	 * Lays a run.
	 *
	 * @param before the connector that the run starts at, if it starts at one
	 * @param after the connector that the run ends at, if it ends at one
	 */
	static List<Element> lay(List<Element> run, Optional<Connector> before, Optional<Connector> after) {
		int count = run.size();
		if (count == 0) {
			return run;
		}
		double[][] cost = new double[count][2];
		int[][] cameFrom = new int[count][2];
		for (int index = 0; index < count; index++) {
			for (int way = 0; way < 2; way++) {
				Optional<Connector> meets = towardsStart(run.get(index), way);
				if (index == 0) {
					cost[0][way] = joint(before, meets) + way * TURNED;
				} else {
					double straight = cost[index - 1][0] + joint(towardsEnd(run.get(index - 1), 0), meets);
					double turned = cost[index - 1][1] + joint(towardsEnd(run.get(index - 1), 1), meets);
					cameFrom[index][way] = turned < straight ? 1 : 0;
					cost[index][way] = Math.min(straight, turned) + way * TURNED;
				}
			}
		}
		double straight = cost[count - 1][0] + joint(towardsEnd(run.get(count - 1), 0), after);
		double turned = cost[count - 1][1] + joint(towardsEnd(run.get(count - 1), 1), after);
		return followBack(run, cameFrom, turned < straight ? 1 : 0);
	}

	private static List<Element> followBack(List<Element> run, int[][] cameFrom, int lastWay) {
		List<Element> laid = new ArrayList<>(run);
		int way = lastWay;
		for (int index = run.size() - 1; index >= 0; index--) {
			Element element = run.get(index);
			if (element.turned() != (way == 1)) {
				laid.set(index, element.turned(way == 1));
			}
			way = cameFrom[index][way];
		}
		return laid;
	}

	private static Optional<Connector> towardsStart(Element element, int way) {
		return element.turned(way == 1).towardsStart();
	}

	private static Optional<Connector> towardsEnd(Element element, int way) {
		return element.turned(way == 1).towardsEnd();
	}

	private static int joint(Optional<Connector> one, Optional<Connector> other) {
		return one.isPresent() && other.isPresent() && !one.get().mates(other.get()) ? 1 : 0;
	}
}

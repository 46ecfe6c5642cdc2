/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import hullwright.network.Element;
import hullwright.network.Fitting;
import hullwright.network.part.Connector;
import hullwright.network.part.Cord;
import hullwright.network.part.Terminator;
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
	private static final double JOINT = 1;
	/** A terminator is what is swapped most easily: of two ways with equally many joints that do not mate, one that fails there. */
	private static final double JOINT_OF_TERMINATOR = 0.99;
	/** More than all joints of a run: what can lie one way only. */
	private static final double IMPOSSIBLE = 1e6;

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
				Element element = run.get(index);
				Optional<Connector> meets = towardsStart(element, way);
				double own = way * TURNED + oneWayOnly(element, way, index == 0 && before.isEmpty() && count > 1, index == count - 1 && after.isEmpty());
				if (index == 0) {
					cost[0][way] = own + joint(before, meets, isTerminator(element));
				} else {
					boolean terminates = isTerminator(element) || isTerminator(run.get(index - 1));
					double straight = cost[index - 1][0] + joint(towardsEnd(run.get(index - 1), 0), meets, terminates);
					double turned = cost[index - 1][1] + joint(towardsEnd(run.get(index - 1), 1), meets, terminates);
					cameFrom[index][way] = turned < straight ? 1 : 0;
					cost[index][way] = own + Math.min(straight, turned);
				}
			}
		}
		boolean terminates = isTerminator(run.get(count - 1));
		double straight = cost[count - 1][0] + joint(towardsEnd(run.get(count - 1), 0), after, terminates);
		double turned = cost[count - 1][1] + joint(towardsEnd(run.get(count - 1), 1), after, terminates);
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

	private static double joint(Optional<Connector> one, Optional<Connector> other, boolean terminates) {
		boolean mates = one.isEmpty() || other.isEmpty() || one.get().mates(other.get());
		return mates ? 0 : terminates ? JOINT_OF_TERMINATOR : JOINT;
	}

	/** A cord lies with its plug to the port, an in-line terminator with its first connector to the backbone. */
	private static double oneWayOnly(Element element, int way, boolean opens, boolean closes) {
		boolean turned = way == 1;
		boolean wrong = element instanceof Fitting fitting && (fitting.part() instanceof Cord && turned
				|| fitting.part() instanceof Terminator terminator && terminator.inLine() && (opens && !turned || closes && turned));
		return wrong ? IMPOSSIBLE : 0;
	}

	private static boolean isTerminator(Element element) {
		return element instanceof Fitting fitting && fitting.part() instanceof Terminator;
	}
}

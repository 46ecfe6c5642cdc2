/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;

import hullwright.analysis.wiring.AttachedDevice;
import hullwright.analysis.wiring.JoinedPoints;
import hullwright.analysis.wiring.Medium;
import hullwright.analysis.wiring.Span;
import hullwright.analysis.wiring.Wiring;
import hullwright.quantity.DelayPerLength;
import hullwright.quantity.Duration;
import hullwright.quantity.Length;

/**
 * Finds the two nodes of a network between which a signal takes longest. Without loops the node farthest from any is an end of the
 * longest way, so two searches do; with loops, or where the line is parted, every node is tried.
 */
final class FarthestNodes {

	private final List<AttachedDevice> devices;
	private final List<List<Span>> at = new ArrayList<>();
	private final double[] delay;
	private final double[] metres;
	private final boolean loops;

	private FarthestNodes(Wiring wiring, int network) {
		devices = wiring.devices().stream().filter(each -> each.network() == network).toList();
		delay = new double[wiring.points()];
		metres = new double[wiring.points()];
		for (int point = 0; point < wiring.points(); point++) {
			at.add(new ArrayList<>(2));
		}
		int joints = 0;
		for (Span span : wiring.spans()) {
			if (carriesSignal(span, network)) {
				at.get(span.from()).add(span);
				at.get(span.to()).add(span);
				joints++;
			}
		}
		JoinedPoints joined = JoinedPoints.of(wiring, span -> carriesSignal(wiring.spans().get(span), network));
		int joinedByTrees = 0;
		for (int point = 0; point < wiring.points(); point++) {
			joinedByTrees += joined.first(point) == point ? 0 : 1;
		}
		loops = joints > joinedByTrees;
	}

	private static boolean carriesSignal(Span span, int network) {
		return span.network() == network && span.passes().signal();
	}

	static Optional<Propagation> of(Wiring wiring, int network, BitTiming timing) {
		FarthestNodes nodes = new FarthestNodes(wiring, network);
		if (nodes.devices.size() < 2) {
			return Optional.empty();
		}
		Optional<AttachedDevice> first = nodes.farthestFrom(nodes.devices.get(0));
		boolean parted = nodes.devices.stream().anyMatch(each -> Double.isInfinite(nodes.delay[each.point()]));
		List<AttachedDevice> starts = nodes.loops || parted ? nodes.devices : first.stream().toList();
		Propagation worst = null;
		for (AttachedDevice start : starts) {
			Optional<AttachedDevice> end = nodes.farthestFrom(start);
			if (end.isPresent() && (worst == null || nodes.delay[end.get().point()] > worst.delay().seconds())) {
				int point = end.get().point();
				worst = new Propagation(start.device().name(), end.get().device().name(), new Length(nodes.metres[point]),
						new Duration(nodes.delay[point]), timing.longestDelay());
			}
		}
		return Optional.ofNullable(worst);
	}

	/** The device farthest from another, none if no other can be reached; leaves delays and lengths to all. */
	private Optional<AttachedDevice> farthestFrom(AttachedDevice start) {
		Arrays.fill(delay, Double.POSITIVE_INFINITY);
		delay[start.point()] = 0;
		metres[start.point()] = 0;
		PriorityQueue<double[]> open = new PriorityQueue<>((one, other) -> Double.compare(one[0], other[0]));
		open.add(new double[] { 0, start.point() });
		while (!open.isEmpty()) {
			double[] next = open.remove();
			int point = (int) next[1];
			if (next[0] > delay[point]) {
				continue;
			}
			for (Span span : at.get(point)) {
				int other = span.from() == point ? span.to() : span.from();
				double length = span.medium() instanceof Medium.Conductors conductors ? conductors.length().metres() : 0;
				double reached = delay[point] + length * perMetre(span.medium()).si();
				if (reached < delay[other]) {
					delay[other] = reached;
					metres[other] = metres[point] + length;
					open.add(new double[] { reached, other });
				}
			}
		}
		return devices.stream().filter(each -> each != start && Double.isFinite(delay[each.point()]))
				.max(Comparator.comparingDouble(each -> delay[each.point()]));
	}

	private static DelayPerLength perMetre(Medium medium) {
		return medium instanceof Medium.Conductors conductors ? conductors.delay().orElse(BitTiming.USUAL_DELAY) : BitTiming.USUAL_DELAY;
	}
}

/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import hullwright.analysis.circuit.Circuit;
import hullwright.analysis.wiring.Medium;
import hullwright.analysis.wiring.Span;
import hullwright.analysis.wiring.Wiring;
import hullwright.network.Backbone;
import hullwright.network.Element;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.quantity.Voltage;

/**
 * Tries every part of the backbone as the place where the one supply of a section enters. The currents of the devices are those of
 * the operating point, the lead keeps its length, and fuses at the tap are left out on both sides of the comparison. Only for
 * sections without meshes: in a mesh the currents change with the place.
 */
final class TapPlacement {

	private final PowerCircuit power;
	private final double[] ohmsOfSpan;
	private final double[] drawn;
	private final int[] from;
	private final int[] to;
	private final int[] order;
	private final int[] first;
	private final int[] next;
	private final int[] visited;
	private final int[] parentSpan;
	private final double[] carried;
	private final double[] lost;

	private TapPlacement(PowerCircuit power, Conditions conditions, PowerFlow flow) {
		this.power = power;
		Wiring wiring = power.wiring;
		Circuit valued = power.valued(conditions);
		ohmsOfSpan = new double[wiring.spans().size()];
		first = new int[wiring.points()];
		Arrays.fill(first, -1);
		next = new int[ohmsOfSpan.length * 2];
		from = wiring.spans().stream().mapToInt(Span::from).toArray();
		to = wiring.spans().stream().mapToInt(Span::to).toArray();
		order = new int[wiring.points()];
		for (int i = 0; i < ohmsOfSpan.length; i++) {
			boolean fuse = wiring.spans().get(i).medium() instanceof Medium.Inside;
			int supply = power.supplyOfSpan[i];
			int back = power.returnOfSpan[i];
			ohmsOfSpan[i] = fuse ? 0 : (supply < 0 ? 0 : valued.ohms(supply)) + (back < 0 ? 0 : valued.ohms(back));
			if (supply >= 0) {
				link(i, wiring.spans().get(i).from(), 0);
				link(i, wiring.spans().get(i).to(), 1);
			}
		}
		drawn = new double[wiring.points()];
		List<Consumer> consumers = power.onNetworks();
		for (int i = 0; i < consumers.size(); i++) {
			drawn[consumers.get(i).attached().orElseThrow().point()] += flow.devices().get(i).current().amperes();
		}
		visited = new int[wiring.points()];
		parentSpan = new int[wiring.points()];
		carried = new double[wiring.points()];
		lost = new double[wiring.points()];
	}

	private void link(int span, int point, int side) {
		next[2 * span + side] = first[point];
		first[point] = 2 * span + side;
	}

	static List<TapPlace> of(PowerCircuit power, Conditions conditions, PowerFlow flow) {
		TapPlacement placement = new TapPlacement(power, conditions, flow);
		Sections sections = power.sections;
		List<TapPlace> places = new ArrayList<>();
		for (Entry entry : power.entries) {
			int section = sections.of(entry.place().point());
			boolean alone = power.entries.stream().filter(other -> sections.of(other.place().point()) == section).count() == 1;
			if (entry.on() && alone) {
				placement.place(entry, sections, section).ifPresent(places::add);
			}
		}
		return places;
	}

	private Optional<TapPlace> place(Entry entry, Sections sections, int section) {
		double now = loss(entry.place().point());
		if (Double.isNaN(now) || now <= 0) {
			return Optional.empty();
		}
		Network network = power.boat.networks().get(entry.place().network());
		String best = entry.place().part();
		double least = now;
		for (Backbone backbone : network.backbones()) {
			for (Element element : backbone.elements()) {
				if (element instanceof Fitting) {
					for (int point : sides(element)) {
						double there = sections.of(point) == section ? loss(point) : Double.POSITIVE_INFINITY;
						if (there < least * (1 - 1e-9)) {
							least = there;
							best = element.name();
						}
					}
				}
			}
		}
		return Optional.of(new TapPlace(network.name(), entry.place().supply(), entry.place().part(), best, new Voltage(now), new Voltage(least)));
	}

	private int[] sides(Element element) {
		int start = power.wiring.towardsStart().get(element.name());
		int end = power.wiring.towardsEnd().get(element.name());
		return start == end ? new int[] { start } : new int[] { start, end };
	}

	/** The largest loss on the way from a point to any device when all currents come from there; NaN in a mesh. */
	private double loss(int root) {
		int filled = 0;
		Arrays.fill(visited, 0);
		order[filled++] = root;
		visited[root] = 1;
		parentSpan[root] = -1;
		for (int at = 0; at < filled; at++) {
			int point = order[at];
			carried[point] = drawn[point];
			for (int half = first[point]; half >= 0; half = next[half]) {
				int span = half / 2;
				if (span == parentSpan[point]) {
					continue;
				}
				int other = (half & 1) == 0 ? to[span] : from[span];
				if (visited[other] != 0) {
					return Double.NaN;
				}
				visited[other] = 1;
				parentSpan[other] = span;
				order[filled++] = other;
			}
		}
		for (int at = filled - 1; at > 0; at--) {
			carried[parent(order[at])] += carried[order[at]];
		}
		double largest = 0;
		lost[root] = 0;
		for (int at = 1; at < filled; at++) {
			int point = order[at];
			lost[point] = lost[parent(point)] + carried[point] * ohmsOfSpan[parentSpan[point]];
			if (drawn[point] > 0) {
				largest = Math.max(largest, lost[point]);
			}
		}
		return largest;
	}

	private int parent(int point) {
		int span = parentSpan[point];
		return from[span] == point ? to[span] : from[span];
	}
}

/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.circuit;

import java.util.Arrays;

/**
 * Which nodes are tied to each other by joints without resistance and by ideal sources, so that one unknown potential serves
 * for all of them. The ties of a group form a tree; one that would close a loop is rejected, since nothing tells its current.
 */
final class RigidForest {

	/** The group of each node, from 0. */
	final int[] group;

	/** How many groups there are. */
	final int groups;

	/** All nodes, each after its parent. */
	final int[] order;

	/** The node that each node is tied to, -1 for the first of a group. */
	final int[] parent;

	/** The element that ties it: the number of a resistor, or the complement of that of a source. */
	final int[] tie;

	/** Joints that close a loop. */
	final int[] rejectedResistors;

	/** Sources that close a loop. */
	final int[] rejectedSources;

	private RigidForest(int[] group, int groups, int[] order, int[] parent, int[] tie, int[] rejectedResistors, int[] rejectedSources) {
		this.group = group;
		this.groups = groups;
		this.order = order;
		this.parent = parent;
		this.tie = tie;
		this.rejectedResistors = rejectedResistors;
		this.rejectedSources = rejectedSources;
	}

	/** Sources are tied first, so that a joint across a source is the one that is rejected. */
	static RigidForest of(Circuit circuit) {
		int[] root = new int[circuit.nodes];
		Arrays.setAll(root, node -> node);
		int[] ties = new int[circuit.nodes];
		int count = 0;
		int[] rejectedSources = new int[circuit.volts.length];
		int refusedSources = 0;
		for (int source = 0; source < circuit.volts.length; source++) {
			if (Double.isNaN(circuit.volts[source])) {
				continue;
			}
			if (unite(root, circuit.sourceMinus[source], circuit.sourcePlus[source])) {
				ties[count++] = ~source;
			} else {
				rejectedSources[refusedSources++] = source;
			}
		}
		int[] rejected = new int[circuit.ohms.length];
		int refused = 0;
		for (int resistor = 0; resistor < circuit.ohms.length; resistor++) {
			if (circuit.ohms[resistor] >= Circuit.NO_RESISTANCE || circuit.resistorFrom[resistor] == circuit.resistorTo[resistor]) {
				continue;
			}
			if (unite(root, circuit.resistorFrom[resistor], circuit.resistorTo[resistor])) {
				ties[count++] = resistor;
			} else {
				rejected[refused++] = resistor;
			}
		}
		return grown(circuit, Arrays.copyOf(ties, count), Arrays.copyOf(rejected, refused), Arrays.copyOf(rejectedSources, refusedSources));
	}

	private static RigidForest grown(Circuit circuit, int[] ties, int[] rejected, int[] rejectedSources) {
		int[] first = new int[circuit.nodes];
		Arrays.fill(first, -1);
		int[] next = new int[ties.length * 2];
		for (int i = 0; i < ties.length; i++) {
			next[2 * i] = first[oneEnd(circuit, ties[i])];
			first[oneEnd(circuit, ties[i])] = 2 * i;
			next[2 * i + 1] = first[otherEnd(circuit, ties[i])];
			first[otherEnd(circuit, ties[i])] = 2 * i + 1;
		}
		int[] group = new int[circuit.nodes];
		Arrays.fill(group, -1);
		int[] order = new int[circuit.nodes];
		int[] parent = new int[circuit.nodes];
		int[] tie = new int[circuit.nodes];
		int groups = 0;
		int filled = 0;
		for (int start = 0; start < circuit.nodes; start++) {
			if (group[start] >= 0) {
				continue;
			}
			parent[start] = -1;
			group[start] = groups;
			order[filled++] = start;
			for (int reached = filled - 1; reached < filled; reached++) {
				int node = order[reached];
				for (int half = first[node]; half >= 0; half = next[half]) {
					int element = ties[half / 2];
					int other = (half & 1) == 0 ? otherEnd(circuit, element) : oneEnd(circuit, element);
					if (group[other] < 0) {
						group[other] = groups;
						parent[other] = node;
						tie[other] = element;
						order[filled++] = other;
					}
				}
			}
			groups++;
		}
		return new RigidForest(group, groups, order, parent, tie, rejected, rejectedSources);
	}

	/** How far the potential of each node lies above that of the first of its group. */
	double[] offsets(Circuit circuit) {
		double[] offset = new double[parent.length];
		for (int node : order) {
			if (parent[node] >= 0) {
				offset[node] = offset[parent[node]] + rise(circuit, node);
			}
		}
		return offset;
	}

	private double rise(Circuit circuit, int node) {
		if (tie[node] >= 0) {
			return 0;
		}
		int source = ~tie[node];
		return circuit.sourcePlus[source] == node ? circuit.volts[source] : -circuit.volts[source];
	}

	private static int oneEnd(Circuit circuit, int element) {
		return element >= 0 ? circuit.resistorFrom[element] : circuit.sourceMinus[~element];
	}

	private static int otherEnd(Circuit circuit, int element) {
		return element >= 0 ? circuit.resistorTo[element] : circuit.sourcePlus[~element];
	}

	private static boolean unite(int[] root, int one, int other) {
		int rootOfOne = find(root, one);
		int rootOfOther = find(root, other);
		root[rootOfOther] = rootOfOne;
		return rootOfOne != rootOfOther;
	}

	/** The representative of a node, with the way there shortened. */
	static int find(int[] root, int node) {
		int at = node;
		while (root[at] != at) {
			root[at] = root[root[at]];
			at = root[at];
		}
		return at;
	}
}

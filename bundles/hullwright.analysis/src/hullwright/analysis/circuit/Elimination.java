/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.circuit;

import java.util.Arrays;
import java.util.Optional;

/**
 * The order in which unknown potentials are eliminated. An unknown with one neighbour (the end of a branch) or two (a point
 * along a conductor) is replaced by its equivalent between its neighbours, which makes no new unknown and at most one new
 * conductance: all of a tree, and of a supply and a return with loads between them, goes this way in linear time. What is left
 * is the core of real meshes, and a sparse solver takes it.
 *
 * <p>Conductances are only added, multiplied and divided (a star-mesh transformation), never subtracted, so that milliohms
 * beside megohms lose no digits.
 */
final class Elimination {

	private final int unknowns;
	private final int slots;
	private final int[] node;
	private final int[] one;
	private final int[] other;
	private final int[] toOne;
	private final int[] toOther;
	private final int[] fill;
	private final MeshCore core;

	private Elimination(Builder builder, int steps, MeshCore core) {
		unknowns = builder.fixed.length;
		slots = builder.slots;
		node = Arrays.copyOf(builder.node, steps);
		one = Arrays.copyOf(builder.one, steps);
		other = Arrays.copyOf(builder.other, steps);
		toOne = Arrays.copyOf(builder.toOne, steps);
		toOther = Arrays.copyOf(builder.toOther, steps);
		fill = Arrays.copyOf(builder.fill, steps);
		this.core = core;
	}

	/** How many unknowns are left for the sparse solver. */
	int coreSize() {
		return core.size();
	}

	/**
	 * Eliminates, once for all right-hand sides.
	 *
	 * @param conductance by slot, in siemens; afterwards those at the time when each unknown was eliminated
	 * @return nothing if a pivot was not positive: the circuit has no stable operating point at these conductances
	 */
	Optional<Factors> factor(double[] conductance) {
		for (int i = 0; i < node.length; i++) {
			double toFirst = conductance[toOne[i]];
			if (other[i] < 0) {
				if (!(toFirst > 0)) {
					return Optional.empty();
				}
				continue;
			}
			double toSecond = conductance[toOther[i]];
			double sum = toFirst + toSecond;
			if (!(sum > 0)) {
				return Optional.empty();
			}
			if (fill[i] >= 0) {
				conductance[fill[i]] += toFirst * toSecond / sum;
			}
		}
		return core.factor(conductance).map(factored -> new Factors(conductance, factored));
	}

	/** Conductances after elimination, ready for any currents. */
	final class Factors {

		private final double[] conductance;
		private final MeshCore.Factors meshes;

		private Factors(double[] conductance, MeshCore.Factors meshes) {
			this.conductance = conductance;
			this.meshes = meshes;
		}

		/**
		 * The potentials that currents cause.
		 *
		 * @param injected the current into each unknown, in A; used up
		 * @param potential in: those that are fixed; out: all
		 */
		void solve(double[] injected, double[] potential) {
			for (int i = 0; i < node.length; i++) {
				double current = injected[node[i]];
				if (current == 0) {
					continue;
				}
				if (other[i] < 0) {
					injected[one[i]] += current;
				} else {
					double toFirst = conductance[toOne[i]];
					double share = current / (toFirst + conductance[toOther[i]]);
					injected[one[i]] += toFirst * share;
					injected[other[i]] += conductance[toOther[i]] * share;
				}
			}
			meshes.solve(injected, potential);
			for (int i = node.length - 1; i >= 0; i--) {
				double toFirst = conductance[toOne[i]];
				if (other[i] < 0) {
					potential[node[i]] = potential[one[i]] + injected[node[i]] / toFirst;
				} else {
					double toSecond = conductance[toOther[i]];
					potential[node[i]] = (injected[node[i]] + toFirst * potential[one[i]] + toSecond * potential[other[i]])
							/ (toFirst + toSecond);
				}
			}
		}
	}

	/** Room for the conductances. */
	double[] conductances() {
		return new double[slots];
	}

	/** Room for currents or potentials. */
	double[] perUnknown() {
		return new double[unknowns];
	}

	/** Gathers the graph and finds the order. */
	static final class Builder {

		private final boolean[] fixed;
		private final int[] first;
		private final int[] degree;
		private final boolean[] gone;
		private int slots;
		private int halves;
		private int[] next;
		private int[] ends;
		private int[] node;
		private int[] one;
		private int[] other;
		private int[] toOne;
		private int[] toOther;
		private int[] fill;

		Builder(boolean[] fixed, int edges) {
			this.fixed = fixed;
			first = new int[fixed.length];
			Arrays.fill(first, -1);
			degree = new int[fixed.length];
			gone = new boolean[fixed.length];
			next = new int[2 * Math.max(edges, 8)];
			ends = new int[2 * Math.max(edges, 8)];
		}

		/** The slot of the conductance between two unknowns, -1 if they are the same. */
		int edge(int from, int to) {
			if (from == to) {
				return -1;
			}
			int there = between(from, to);
			return there >= 0 ? there : added(from, to);
		}

		Elimination build() {
			node = new int[fixed.length];
			one = new int[fixed.length];
			other = new int[fixed.length];
			toOne = new int[fixed.length];
			toOther = new int[fixed.length];
			fill = new int[fixed.length];
			int[] waiting = new int[fixed.length * 3];
			int end = 0;
			for (int i = 0; i < fixed.length; i++) {
				if (!fixed[i] && degree[i] <= 2) {
					waiting[end++] = i;
				}
			}
			int steps = 0;
			for (int at = 0; at < end; at++) {
				int unknown = waiting[at];
				if (gone[unknown] || degree[unknown] == 0) {
					continue;
				}
				take(unknown, steps);
				if (waiting.length < end + 2) {
					waiting = Arrays.copyOf(waiting, waiting.length * 2);
				}
				if (!fixed[one[steps]] && degree[one[steps]] <= 2) {
					waiting[end++] = one[steps];
				}
				if (other[steps] >= 0 && !fixed[other[steps]] && degree[other[steps]] <= 2) {
					waiting[end++] = other[steps];
				}
				steps++;
			}
			return new Elimination(this, steps, core());
		}

		private void take(int unknown, int step) {
			gone[unknown] = true;
			node[step] = unknown;
			one[step] = -1;
			other[step] = -1;
			fill[step] = -1;
			for (int half = first[unknown]; half >= 0; half = next[half]) {
				int neighbour = ends[half];
				if (!gone[neighbour]) {
					degree[neighbour]--;
					if (one[step] < 0) {
						one[step] = neighbour;
						toOne[step] = half / 2;
					} else {
						other[step] = neighbour;
						toOther[step] = half / 2;
					}
				}
			}
			if (other[step] >= 0 && !(fixed[one[step]] && fixed[other[step]])) {
				fill[step] = edge(one[step], other[step]);
			}
		}

		private MeshCore core() {
			int[] left = new int[fixed.length];
			int count = 0;
			for (int i = 0; i < fixed.length; i++) {
				if (!fixed[i] && !gone[i] && degree[i] > 0) {
					left[count++] = i;
				}
			}
			MeshCore.Builder core = new MeshCore.Builder(Arrays.copyOf(left, count), fixed.length);
			for (int i = 0; i < count; i++) {
				for (int half = first[left[i]]; half >= 0; half = next[half]) {
					if (!gone[ends[half]]) {
						core.neighbour(left[i], ends[half], half / 2);
					}
				}
			}
			return core.build();
		}

		private int between(int from, int to) {
			int shorter = degree[from] <= degree[to] ? from : to;
			int target = shorter == from ? to : from;
			int before = -1;
			for (int half = first[shorter]; half >= 0; half = next[half]) {
				if (ends[half] == target) {
					return half / 2;
				}
				if (!gone[ends[half]]) {
					before = half;
				} else if (before < 0) {
					// what is gone is passed once: the end of a long conductor has had many neighbours
					first[shorter] = next[half];
				} else {
					next[before] = next[half];
				}
			}
			return -1;
		}

		private int added(int from, int to) {
			if (halves + 2 > ends.length) {
				ends = Arrays.copyOf(ends, ends.length * 2);
				next = Arrays.copyOf(next, next.length * 2);
			}
			hang(from, to);
			hang(to, from);
			return slots++;
		}

		private void hang(int from, int to) {
			ends[halves] = to;
			next[halves] = first[from];
			first[from] = halves++;
			degree[from]++;
		}
	}
}

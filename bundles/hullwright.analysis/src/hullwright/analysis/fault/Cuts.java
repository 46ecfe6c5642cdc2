/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.fault;

import java.util.Arrays;

/**
 * What each edge of a graph, if it is cut, parts from the roots. One walk in depth first finds all of it: an edge parts what lies
 * beyond it unless something beyond has another way back (Tarjan 1974, "A note on finding the bridges of a graph").
 */
final class Cuts {

	private final int[] entered;
	private final int[] last;
	private final int[] below;

	private Cuts(int[] entered, int[] last, int[] below) {
		this.entered = entered;
		this.last = last;
		this.below = below;
	}

	/**
	 * The cuts of a graph.
	 *
	 * @param points how many points there are
	 * @param from where each edge begins
	 * @param to where it ends; -1 for an edge that is not there
	 * @param roots the points that everything is parted from; each other point that they do not reach is a root of its own
	 */
	static Cuts of(int points, int[] from, int[] to, int[] roots) {
		int[] first = new int[points + 1];
		Arrays.fill(first, -1);
		int all = from.length + roots.length;
		int[] next = new int[2 * all];
		int[] ends = new int[2 * all];
		for (int i = 0; i < all; i++) {
			int one = i < from.length ? from[i] : points;
			int other = i < from.length ? to[i] : roots[i - from.length];
			if (other >= 0) {
				ends[2 * i] = other;
				next[2 * i] = first[one];
				first[one] = 2 * i;
				ends[2 * i + 1] = one;
				next[2 * i + 1] = first[other];
				first[other] = 2 * i + 1;
			}
		}
		int[] entered = new int[points + 1];
		int[] last = new int[points + 1];
		int[] low = new int[points + 1];
		int[] via = new int[points + 1];
		int[] at = first.clone();
		int[] stack = new int[points + 1];
		int[] below = new int[from.length];
		Arrays.fill(below, -1);
		int clock = 0;
		for (int root = points; root >= 0; root--) {
			if (entered[root] != 0) {
				continue;
			}
			int depth = 0;
			stack[0] = root;
			via[root] = -1;
			entered[root] = low[root] = ++clock;
			while (depth >= 0) {
				int point = stack[depth];
				int half = at[point];
				if (half >= 0) {
					at[point] = next[half];
					int other = ends[half];
					if (half / 2 == via[point]) {
						continue;
					}
					if (entered[other] == 0) {
						via[other] = half / 2;
						entered[other] = low[other] = ++clock;
						stack[++depth] = other;
					} else {
						low[point] = Math.min(low[point], entered[other]);
					}
				} else {
					last[point] = clock;
					depth--;
					if (depth >= 0) {
						int parent = stack[depth];
						low[parent] = Math.min(low[parent], low[point]);
						if (low[point] > entered[parent] && via[point] < from.length) {
							below[via[point]] = point;
						}
					}
				}
			}
		}
		return new Cuts(entered, last, below);
	}

	/** Whether cutting an edge parts anything. */
	boolean parts(int edge) {
		return below[edge] >= 0;
	}

	/** Whether a point is parted from the roots when an edge is cut. */
	boolean parts(int edge, int point) {
		return below[edge] >= 0 && entered[point] >= entered[below[edge]] && entered[point] <= last[below[edge]];
	}
}

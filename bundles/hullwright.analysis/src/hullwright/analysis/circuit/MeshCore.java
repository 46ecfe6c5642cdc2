/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.circuit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.TreeSet;

import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;

/**
 * The unknowns of real meshes, each with three neighbours or more, solved by sparse Cholesky factors. The order is that of
 * least degree, which keeps the factors sparse.
 */
final class MeshCore {

	private final int[] unknowns;
	private final int[] rowStart;
	private final int[] neighbour;
	private final int[] slot;
	private final int[] place;

	private MeshCore(int[] unknowns, int[] rowStart, int[] neighbour, int[] slot, int[] place) {
		this.unknowns = unknowns;
		this.rowStart = rowStart;
		this.neighbour = neighbour;
		this.slot = slot;
		this.place = place;
	}

	/** How many unknowns there are. */
	int size() {
		return unknowns.length;
	}

	/** As {@link Elimination#factor}, for the unknowns of the core. */
	Optional<Factors> factor(double[] conductance) {
		int size = unknowns.length;
		if (size == 0) {
			return Optional.of(new Factors(conductance, null));
		}
		DMatrixSparseTriplet entries = new DMatrixSparseTriplet(size, size, neighbour.length + size);
		for (int row = 0; row < size; row++) {
			double diagonal = 0;
			for (int i = rowStart[row]; i < rowStart[row + 1]; i++) {
				double value = conductance[slot[i]];
				diagonal += value;
				int column = place[neighbour[i]];
				if (column >= 0) {
					entries.addItem(row, column, -value);
				}
			}
			entries.addItem(row, row, diagonal);
		}
		DMatrixSparseCSC matrix = DConvertMatrixStruct.convert(entries, (DMatrixSparseCSC) null);
		matrix.sortIndices(null);
		LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver = LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
		return solver.setA(matrix) ? Optional.of(new Factors(conductance, solver)) : Optional.empty();
	}

	/** The factors of the core, ready for any currents. */
	final class Factors {

		private final double[] conductance;
		private final LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver;

		private Factors(double[] conductance, LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver) {
			this.conductance = conductance;
			this.solver = solver;
		}

		/** As {@link Elimination.Factors#solve}, for the unknowns of the core. */
		void solve(double[] injected, double[] potential) {
			int size = unknowns.length;
			if (size == 0) {
				return;
			}
			DMatrixRMaj right = new DMatrixRMaj(size, 1);
			for (int row = 0; row < size; row++) {
				double current = injected[unknowns[row]];
				for (int i = rowStart[row]; i < rowStart[row + 1]; i++) {
					if (place[neighbour[i]] < 0) {
						current += conductance[slot[i]] * potential[neighbour[i]];
					}
				}
				right.set(row, 0, current);
			}
			DMatrixRMaj result = new DMatrixRMaj(size, 1);
			solver.solve(right, result);
			for (int row = 0; row < size; row++) {
				potential[unknowns[row]] = result.get(row, 0);
			}
		}
	}

	/** Gathers the neighbours of each unknown, then orders them. */
	static final class Builder {

		private final int[] left;
		private final int[] place;
		private final List<List<int[]>> neighbours = new ArrayList<>();

		Builder(int[] left, int all) {
			this.left = left;
			place = new int[all];
			Arrays.fill(place, -1);
			for (int i = 0; i < left.length; i++) {
				place[left[i]] = i;
				neighbours.add(new ArrayList<>());
			}
		}

		/** One edge, told from both of its ends. */
		void neighbour(int unknown, int other, int slot) {
			neighbours.get(place[unknown]).add(new int[] { other, slot });
		}

		MeshCore build() {
			int[] order = leastDegreeFirst();
			int[] unknowns = new int[left.length];
			int entries = neighbours.stream().mapToInt(List::size).sum();
			int[] rowStart = new int[left.length + 1];
			int[] neighbour = new int[entries];
			int[] slot = new int[entries];
			int filled = 0;
			for (int row = 0; row < order.length; row++) {
				unknowns[row] = left[order[row]];
				for (int[] each : neighbours.get(order[row])) {
					neighbour[filled] = each[0];
					slot[filled++] = each[1];
				}
				rowStart[row + 1] = filled;
			}
			for (int row = 0; row < order.length; row++) {
				place[unknowns[row]] = row;
			}
			return new MeshCore(unknowns, rowStart, neighbour, slot, place);
		}

		private int[] leastDegreeFirst() {
			List<TreeSet<Integer>> live = new ArrayList<>();
			PriorityQueue<long[]> queue = new PriorityQueue<>((a, b) -> a[0] != b[0] ? Long.compare(a[0], b[0]) : Long.compare(a[1], b[1]));
			for (int i = 0; i < left.length; i++) {
				TreeSet<Integer> others = new TreeSet<>();
				for (int[] each : neighbours.get(i)) {
					if (place[each[0]] >= 0) {
						others.add(place[each[0]]);
					}
				}
				live.add(others);
				queue.add(new long[] { others.size(), i });
			}
			int[] order = new int[left.length];
			boolean[] taken = new boolean[left.length];
			for (int count = 0; count < order.length;) {
				long[] candidate = queue.remove();
				int unknown = (int) candidate[1];
				TreeSet<Integer> others = live.get(unknown);
				if (taken[unknown] || candidate[0] != others.size()) {
					continue;
				}
				taken[unknown] = true;
				order[count++] = unknown;
				for (int other : others) {
					TreeSet<Integer> its = live.get(other);
					its.remove(unknown);
					its.addAll(others);
					its.remove(other);
					queue.add(new long[] { its.size(), other });
				}
			}
			return order;
		}
	}
}

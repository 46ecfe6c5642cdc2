/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.benchmarks;

import hullwright.analysis.circuit.LoadLaw;
import hullwright.analysis.circuit.Solution;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;

/**
 * Writes the netlists of large networks, holds what ngspice made of them against our solver, and solves one.
 *
 * <pre>
 * NgspiceAgreement write FOLDER      writes SHAPE-LAW-NODES.cir for all of them
 * NgspiceAgreement compare FOLDER    reads SHAPE-LAW-NODES.raw beside; status 1 if one differs by more than its limit
 * NgspiceAgreement solve SHAPE-LAW-NODES
 * </pre>
 */
public final class NgspiceAgreement {

	private static final int[] SIZES = { 50, 1000, 10000, 50000 };

	/** A larger grid takes ngspice minutes. */
	private static final int LARGEST_GRID = 10000;

	/** In V. */
	private static final double LINEAR = 1e-6;

	/** In V. */
	private static final double CONSTANT_POWER = 1e-4;

	private NgspiceAgreement() {
	}

	/** See above. */
	public static void main(String[] arguments) throws IOException {
		if (arguments[0].equals("solve")) {
			String[] name = arguments[1].split("-");
			Solution solution = LargeNetwork.of(LargeNetwork.Shape.valueOf(name[0]), Integer.parseInt(name[2]), LoadLaw.valueOf(name[1])).circuit().solve();
			System.out.println(solution.problems().size() + " problems");
			return;
		}
		Path folder = Path.of(arguments[1]);
		boolean agreed = true;
		for (LargeNetwork.Shape shape : LargeNetwork.Shape.values()) {
			for (LoadLaw law : new LoadLaw[] { LoadLaw.CURRENT, LoadLaw.POWER }) {
				for (int size : SIZES) {
					if (shape == LargeNetwork.Shape.GRID && size > LARGEST_GRID) {
						continue;
					}
					String name = shape + "-" + law + "-" + size;
					LargeNetwork network = LargeNetwork.of(shape, size, law);
					if (arguments[0].equals("write")) {
						Files.writeString(folder.resolve(name + ".cir"), network.netlist());
					} else {
						double difference = largestDifference(network, Files.readAllBytes(folder.resolve(name + ".raw")));
						System.out.printf(Locale.ROOT, "%s %d %.0e%n", name, network.nodes(), difference);
						agreed &= difference <= (law == LoadLaw.POWER ? CONSTANT_POWER : LINEAR);
					}
				}
			}
		}
		System.exit(agreed ? 0 : 1);
	}

	/** In V, over all nodes. */
	private static double largestDifference(LargeNetwork network, byte[] raw) {
		String text = new String(raw, StandardCharsets.ISO_8859_1);
		int binary = text.indexOf("Binary:\n") + "Binary:\n".length();
		String[] names = text.substring(text.indexOf("Variables:\n") + "Variables:\n".length(), text.indexOf("Binary:\n")).split("\n");
		ByteBuffer values = ByteBuffer.wrap(raw, binary, raw.length - binary).slice().order(ByteOrder.LITTLE_ENDIAN);
		double[] volts = new double[network.nodes()];
		Arrays.fill(volts, Double.NaN);
		volts[0] = 0;
		for (int at = 0; at < names.length; at++) {
			String name = names[at].strip().split("\\s+")[1];
			double value = values.getDouble();
			if (name.matches("v\\(\\d+\\)")) {
				volts[Integer.parseInt(name.substring(2, name.length() - 1))] = value;
			} else if (name.matches("\\d+")) {
				volts[Integer.parseInt(name)] = value;
			}
		}
		Solution ours = network.circuit().solve();
		double largest = 0;
		for (int node = 0; node < volts.length; node++) {
			double difference = Math.abs(volts[node] - ours.voltage(node));
			// one that ngspice does not tell makes the whole differ
			largest = Double.isNaN(difference) ? Double.POSITIVE_INFINITY : Math.max(largest, difference);
		}
		return largest;
	}
}

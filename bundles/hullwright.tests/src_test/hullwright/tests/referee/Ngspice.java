/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.referee;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Runs the circuit simulator ngspice, a Debian package, as a process of its own.
 */
final class Ngspice {

	/** What to do where it is missing. */
	static final String INSTALL = "these tests need ngspice; on Debian and Ubuntu: sudo apt-get install -y ngspice";

	private static final int AT_ONCE = 2;

	private static final int MOST_MINUTES = 10;

	private Ngspice() {
	}

	/**
	 * The operating points of circuits, in their order.
	 *
	 * @param netlists each whole, without control commands
	 * @return of each its voltages as {@code v(node)} in V and its currents as {@code i(source)} in A
	 */
	static List<Map<String, Double>> operatingPoints(List<String> netlists) {
		return operatingPoints("ngspice", netlists);
	}

	/** @param command what runs ngspice */
	static List<Map<String, Double>> operatingPoints(String command, List<String> netlists) {
		try {
			Path folder = Files.createTempDirectory("hullwright-ngspice");
			try {
				return operatingPoints(command, netlists, folder);
			} finally {
				delete(folder);
			}
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	private static List<Map<String, Double>> operatingPoints(String command, List<String> netlists, Path folder) throws IOException {
		List<Process> running = new ArrayList<>();
		for (int part = 0; part < AT_ONCE; part++) {
			StringBuilder script = new StringBuilder("* all circuits of this part\n.control\nset filetype=ascii\n");
			for (int at = part; at < netlists.size(); at += AT_ONCE) {
				Files.writeString(folder.resolve(at + ".cir"), netlists.get(at));
				script.append("source ").append(at).append(".cir\nop\nwrite ").append(at).append(".raw\ndestroy all\nremcirc\n");
			}
			Files.writeString(folder.resolve("all" + part + ".cir"), script.append("quit\n.endc\n.end\n"));
			running.add(start(command, folder, "all" + part));
		}
		for (Process process : running) {
			try {
				if (!process.waitFor(MOST_MINUTES, TimeUnit.MINUTES)) {
					running.forEach(Process::destroy);
					throw new IllegalStateException("ngspice has not come to an end in " + MOST_MINUTES + " minutes");
				}
			} catch (InterruptedException e) {
				running.forEach(Process::destroy);
				Thread.currentThread().interrupt();
				throw new IllegalStateException("interrupted while ngspice ran", e);
			}
		}
		return IntStream.range(0, netlists.size()).mapToObj(at -> answer(folder, at, netlists.get(at))).toList();
	}

	/** {@code -n}: what a user has set for himself must not matter. */
	private static Process start(String command, Path folder, String script) {
		try {
			return new ProcessBuilder(command, "-n", "-b", script + ".cir").directory(folder.toFile())
					.redirectErrorStream(true).redirectOutput(folder.resolve(script + ".log").toFile()).start();
		} catch (IOException e) {
			throw new AssertionError(INSTALL, e);
		}
	}

	private static Map<String, Double> answer(Path folder, int at, String netlist) {
		try {
			Path raw = folder.resolve(at + ".raw");
			String text = Files.exists(raw) ? Files.readString(raw) : "";
			if (!text.contains("Plotname: Operating Point")) {
				throw new IllegalStateException("ngspice found no operating point of\n" + netlist + "\nIt said:\n"
						+ said(Files.readString(folder.resolve("all" + at % AT_ONCE + ".log")), netlist));
			}
			return vectors(text);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	/** What was said of one circuit: from its title to the next one's. */
	private static String said(String log, String netlist) {
		int title = log.toLowerCase(Locale.ROOT).indexOf(netlist.substring(0, netlist.indexOf('\n')).toLowerCase(Locale.ROOT));
		int next = title < 0 ? -1 : log.indexOf("Circuit: ", title);
		return log.substring(Math.max(0, title), next < 0 ? log.length() : next);
	}

	/** The vectors of a raw file in its text form: their names one a line, then as many values. */
	private static Map<String, Double> vectors(String raw) {
		List<String> lines = raw.lines().toList();
		int names = lines.indexOf("Variables:") + 1;
		int values = lines.indexOf("Values:") + 1;
		Map<String, Double> answer = new HashMap<>();
		for (int at = 0; names + at < values - 1; at++) {
			String[] value = lines.get(values + at).strip().split("\\s+");
			answer.put(lines.get(names + at).strip().split("\\s+")[1], Double.valueOf(value[value.length - 1]));
		}
		return answer;
	}

	private static void delete(Path folder) throws IOException {
		try (Stream<Path> files = Files.walk(folder)) {
			for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
				Files.delete(file);
			}
		}
	}
}

/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.benchmarks;

import hullwright.check.BoatsRead;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.check.WantedBoats;
import hullwright.network.Boat;
import java.time.LocalDate;
import java.util.Map;
import java.util.Set;

/**
 * Boats whose devices tell and want something, as large as a measurement needs them.
 */
final class GeneratedData {

	/** PGNs with data of their own, none of which needs an instance. */
	private static final int[] MESSAGES = { 127245, 127250, 127251, 127257, 128259, 128267, 129025, 129026, 129283, 130306 };

	private static final int DEVICES_PER_NETWORK = 50;

	private GeneratedData() {
	}

	private static StringBuilder kit() {
		return new StringBuilder("""
				import "standard:messages"
				catalog Generated "Generated" {
					family plug "Plug" { vendor }
					terminator end { end plug male; 120 ohm }
					tee block { backbone plug male, plug female; ports 1..60 : plug female }
					cable wire { ends plug male, plug female }
					device link { port a : plug male; port b : plug male; isolated a from b; passes 127250 and 129025 }
				""");
	}

	/**
	 * A boat with networks of 50 devices in a row, a bridge from each to the next. Every device tells two messages and wants one.
	 *
	 * @param devices a multiple of 50
	 */
	static Boat ofDevices(int devices) {
		StringBuilder text = kit();
		for (int i = 0; i < MESSAGES.length; i++) {
			text.append("device kind").append(i).append(" { port bus : plug male; sends ").append(MESSAGES[i]).append(" every 1 s; sends ")
					.append(MESSAGES[(i + 3) % MESSAGES.length]).append(" every 2 s; wants ").append(MESSAGES[(i + 5) % MESSAGES.length]).append(" }\n");
		}
		text.append("}\nseries Boat \"Generated, no such boat exists\" {\n");
		int networks = devices / DEVICES_PER_NETWORK;
		for (int i = 0; i + 1 < networks; i++) {
			text.append("device link").append(i).append(" : link\n");
		}
		for (int network = 0; network < networks; network++) {
			text.append("network net").append(network).append(" { backbone of wire { terminator l : end tee t : block terminator r : end }\n");
			for (int i = 0; i < DEVICES_PER_NETWORK; i++) {
				text.append("drop t.").append(i + 1).append(" to device").append(i).append(" : kind").append(i % MESSAGES.length).append('\n');
			}
			if (network > 0) {
				text.append("drop t.51 to link").append(network - 1).append(".b\n");
			}
			if (network + 1 < networks) {
				text.append("drop t.52 to link").append(network).append(".a\n");
			}
			text.append("}\n");
		}
		return boat(text.append("}\n").toString());
	}

	/**
	 * A boat with one network on which so many messages are told, some 40 % of the bus.
	 *
	 * @param messages a multiple of 10
	 */
	static Boat ofMessages(int messages) {
		StringBuilder text = kit().append("device teller { port bus : plug male");
		for (int i = 0; i < MESSAGES.length; i++) {
			// as a rule a third of a bus carries some 600 frames a second
			text.append("; sends ").append(MESSAGES[i]).append(" every ").append(messages * (2 + i % 3)).append(" ms");
		}
		text.append(" }\n}\nseries Boat \"Generated, no such boat exists\" {\n")
				.append("network net { backbone of wire { terminator l : end tee t : block terminator r : end }\n");
		for (int i = 0; i < messages / MESSAGES.length; i++) {
			text.append("drop t.").append(i + 1).append(" to device").append(i).append(" : teller\n");
		}
		return boat(text.append("}\n}\n").toString());
	}

	private static Boat boat(String text) {
		BoatsRead read = Checker.create().boats(new CheckRequest(Snapshot.of(Map.of("boat.hull", text)), Set.of(), new WantedBoats.Plainest(), LocalDate.EPOCH));
		if (!read.problems().isEmpty() || !read.gaps().isEmpty()) {
			throw new IllegalStateException("the generated text is wrong: " + read.problems() + read.gaps());
		}
		return read.boats().get(0);
	}
}

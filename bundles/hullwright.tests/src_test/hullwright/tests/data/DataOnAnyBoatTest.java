/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.analysis.data.DataFlow;
import hullwright.analysis.data.SeveralSources;
import hullwright.analysis.data.WantedData;
import hullwright.check.BoatsRead;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.network.Boat;
import hullwright.testkit.BoatText;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What must hold for the data of any boat: random networks with bridges against a plain search over networks, boats whose text is
 * shuffled or whose network is cut in two by a bridge, and the example boats, which are good.
 */
class DataOnAnyBoatTest {

	private static final int[] MESSAGES = { 127250, 127251, 128259, 128267, 129025, 129026 };

	/** A random boat: what is where, and which bridge passes what. */
	private static final class RandomBoat {

		private record Bridge(int a, int b, boolean both, Set<Integer> passes) {
		}

		private final List<Set<Integer>> sends = new ArrayList<>();
		private final List<Integer> wants = new ArrayList<>();
		private final List<Integer> home = new ArrayList<>();
		private final List<Bridge> bridges = new ArrayList<>();
		private final int networks;

		RandomBoat(Random random) {
			networks = 1 + random.nextInt(4);
			int devices = 2 + random.nextInt(8);
			for (int i = 0; i < devices; i++) {
				Set<Integer> told = new LinkedHashSet<>();
				for (int message : MESSAGES) {
					if (random.nextInt(5) == 0) {
						told.add(message);
					}
				}
				sends.add(told);
				wants.add(MESSAGES[random.nextInt(MESSAGES.length)]);
				home.add(random.nextInt(networks));
			}
			for (int i = random.nextInt(5); i > 0 && networks > 1; i--) {
				int a = random.nextInt(networks);
				int b = (a + 1 + random.nextInt(networks - 1)) % networks;
				Set<Integer> passes = new LinkedHashSet<>();
				for (int message : MESSAGES) {
					if (random.nextBoolean()) {
						passes.add(message);
					}
				}
				passes.add(MESSAGES[0]);
				bridges.add(new Bridge(a, b, random.nextBoolean(), passes));
			}
		}

		String text(Random order) {
			StringBuilder kit = new StringBuilder("""
					import "standard:messages"
					catalog Kit "Invented" {
					  family f "Invented" { vendor }
					  terminator end { end f male; 120 ohm }
					  tee block { backbone f male, f female; ports 1..30 : f female }
					  cable wire { ends f male, f female }
					  device link { port a : f male; port b : f male; isolated a from b; passes settable }
					""");
			List<List<String>> drops = new ArrayList<>();
			for (int i = 0; i < networks; i++) {
				drops.add(new ArrayList<>());
			}
			for (int i = 0; i < sends.size(); i++) {
				kit.append("device kind").append(i).append(" { port bus : f male; wants ").append(wants.get(i));
				sends.get(i).forEach(each -> kit.append("; sends ").append(each).append(" every 1 s"));
				kit.append(" }\n");
				drops.get(home.get(i)).add("device" + i + " : kind" + i);
			}
			StringBuilder series = new StringBuilder("}\nseries Skerry \"Invented\" {\n");
			for (int i = 0; i < bridges.size(); i++) {
				Bridge bridge = bridges.get(i);
				String what = bridge.passes.stream().map(String::valueOf).collect(Collectors.joining(" and "));
				series.append("device link").append(i).append(" : link { passes ").append(what).append(bridge.both ? "" : " from a to b").append(" }\n");
				drops.get(bridge.a).add("link" + i + ".a");
				drops.get(bridge.b).add("link" + i + ".b");
			}
			for (int i = 0; i < networks; i++) {
				Collections.shuffle(drops.get(i), order);
				series.append("network net").append(i).append(" { backbone of wire { terminator l : end tee t : block terminator r : end }\n");
				for (int port = 0; port < drops.get(i).size(); port++) {
					series.append("drop t.").append(port + 1).append(" to ").append(drops.get(i).get(port)).append('\n');
				}
				series.append("}\n");
			}
			return kit.append(series).append("}\n").toString();
		}

		/** Whether a device gets what it wants, by a search over networks: from those where another device tells it. */
		boolean isMet(int device) {
			int message = wants.get(device);
			if (sends.get(device).contains(message)) {
				return true;
			}
			Deque<Integer> open = new ArrayDeque<>();
			for (int i = 0; i < sends.size(); i++) {
				if (i != device && sends.get(i).contains(message)) {
					open.add(home.get(i));
				}
			}
			Set<Integer> reached = new LinkedHashSet<>(open);
			while (!open.isEmpty()) {
				int network = open.remove();
				for (Bridge bridge : bridges) {
					if (bridge.passes.contains(message)) {
						if (bridge.a == network && reached.add(bridge.b)) {
							open.add(bridge.b);
						}
						if (bridge.both && bridge.b == network && reached.add(bridge.a)) {
							open.add(bridge.a);
						}
					}
				}
			}
			return reached.contains(home.get(device));
		}
	}

	private static Map<String, Boolean> met(String text) {
		Map<String, Boolean> met = new TreeMap<>();
		DataFlow.of(BoatText.boat(text)).wants().forEach(each -> met.put(each.device().substring(each.device().lastIndexOf('.') + 1), each.isMet()));
		return met;
	}

	@RepeatedTest(150)
	void aWantIsMetExactlyWhereAWayLeadsToIt(RepetitionInfo repetition) {
		RandomBoat boat = new RandomBoat(new Random(repetition.getCurrentRepetition()));
		Map<String, Boolean> expected = new TreeMap<>();
		for (int i = 0; i < boat.wants.size(); i++) {
			expected.put("device" + i, boat.isMet(i));
		}
		String text = boat.text(new Random(1));
		assertEquals(expected, met(text), text);
		assertEquals(expected, met(boat.text(new Random(2))), "in another order");
	}

	/** What is on one network is still within reach when a bridge that passes everything cuts it in two. */
	@RepeatedTest(40)
	void aBridgeThatPassesEverythingLosesNothing(RepetitionInfo repetition) {
		Random random = new Random(1000 + repetition.getCurrentRepetition());
		RandomBoat boat = new RandomBoat(random);
		boat.bridges.clear();
		Collections.fill(boat.home, 0);
		Map<String, Boolean> whole = met(boat.text(new Random(1)));
		if (boat.networks < 2) {
			return;
		}
		for (int i = 0; i < boat.home.size(); i++) {
			boat.home.set(i, random.nextInt(2));
		}
		boat.bridges.add(new RandomBoat.Bridge(0, 1, true, Set.of(127250, 127251, 128259, 128267, 129025, 129026)));
		assertEquals(whole, met(boat.text(new Random(1))));
	}

	/** The boats of the good examples lack nothing, and nothing is mistaken for anything else. */
	@ParameterizedTest
	@ValueSource(strings = { "first-power-up", "day-boat", "harbour-pilot", "twin-cruiser", "motor-yacht", "faulty" })
	void goodBoatsHaveNoFaultInTheirData(String example) throws IOException {
		BoatsRead read = Checker.create().boats(CheckRequest.ofAll(Snapshot.ofFolder(Path.of("..", "hullwright.examples", "examples", example)), LocalDate.EPOCH));
		assertTrue(!read.boats().isEmpty());
		for (Boat boat : read.boats()) {
			DataFlow flow = DataFlow.of(boat);
			assertEquals(List.of(), flow.wants().stream().filter(each -> !each.isMet()).map(WantedData::toString).toList(), boat.selection() + "");
			assertEquals(List.of(), flow.loops());
			assertEquals(List.of(), flow.doubled());
			assertEquals(List.of(), flow.problems());
			assertEquals(List.of(), flow.shared().stream().filter(SeveralSources::sameKey).toList());
		}
	}
}

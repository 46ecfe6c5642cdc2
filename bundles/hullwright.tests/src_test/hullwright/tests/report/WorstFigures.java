/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.report;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/**
 * What a program makes of the JSON of a boat to know the worst of all power states, written without anything of the report.
 */
final class WorstFigures {

	private final JsonObject boat;
	private final List<JsonObject> states;
	private final Map<String, List<Double>> found = new TreeMap<>();

	WorstFigures(JsonObject boat) {
		this.boat = boat;
		states = items(boat, "states");
	}

	static String key(String network, String name, String head) {
		return network + " / " + name + " / " + head;
	}

	Map<String, List<Double>> devices() {
		found.clear();
		for (int i = 0; i < items(states.get(0).getAsJsonObject("lowest"), "devices").size(); i++) {
			int device = i;
			List<JsonObject> fed = states.stream().filter(state -> at(state, "lowest", "devices", device).get("fed").getAsBoolean()).toList();
			if (fed.isEmpty()) {
				continue;
			}
			JsonObject worst = least(fed, state -> number(at(state, "lowest", "devices", device), "voltage_V"));
			JsonObject lowest = at(worst, "lowest", "devices", device);
			String network = text(lowest, "network");
			String name = text(lowest, "device");
			put(network, name, "Lowest", lowest, "voltage_V");
			put(network, name, "Usual", at(worst, "nominal", "devices", device), "voltage_V");
			put(network, name, "Drop", lowest, "drop_V");
			put(network, name, "Draws", lowest, "current_A");
			put(network, name, "Starting", at(least(fed, state -> number(at(state, "starting", "devices", device), "voltage_V")), "starting", "devices", device),
					"voltage_V");
			put(network, name, "Highest", at(least(fed, state -> -number(at(state, "highest", "devices", device), "voltage_V")), "highest", "devices", device),
					"voltage_V");
			put(network, name, "Return", at(least(fed, state -> -Math.abs(number(at(state, "lowest", "devices", device), "shift_V"))), "lowest", "devices", device),
					"shift_V");
			fed.stream().flatMap(state -> Stream.of(at(state, "lowest", "devices", device), at(state, "starting", "devices", device)))
					.filter(each -> each.has("aboveLowest_V")).min(Comparator.comparingDouble(each -> number(each, "aboveLowest_V")))
					.ifPresent(each -> put(network, name, "Above limit", each, "aboveLowest_V"));
		}
		return found;
	}

	Map<String, List<Double>> entries() {
		found.clear();
		for (int i = 0; i < items(states.get(0).getAsJsonObject("lowest"), "entries").size(); i++) {
			int entry = i;
			List<JsonObject> on = states.stream().filter(state -> at(state, "lowest", "entries", entry).get("on").getAsBoolean()).toList();
			if (!on.isEmpty()) {
				JsonObject worst = at(least(on, state -> number(at(state, "lowest", "entries", entry), "voltage_V")), "lowest", "entries", entry);
				String network = networkOf(text(worst.getAsJsonObject("entry"), "part"));
				String supply = text(worst.getAsJsonObject("entry"), "supply");
				put(network, supply, "Current", worst, "current_A");
				put(network, supply, "Voltage there", worst, "voltage_V");
				put(network, supply, "Return there", worst, "shift_V");
			}
		}
		return found;
	}

	Map<String, List<Double>> spans() {
		found.clear();
		for (int i = 0; i < items(states.get(0).getAsJsonObject("lowest"), "spans").size(); i++) {
			int span = i;
			JsonObject most = at(least(states, state -> -larger(at(state, "lowest", "spans", span))), "lowest", "spans", span);
			JsonObject between = most.getAsJsonObject("span");
			if (text(between, "kind").equals("inside")) {
				continue;
			}
			String network = networkOf(text(between, "element"));
			String name = within(network, text(between, "element")) + (between.has("other") ? " | " + within(network, text(between, "other")) : "");
			put(network, name, "Supply", Math.abs(number(most, "supply_A")));
			put(network, name, "Return", Math.abs(number(most, "back_A")));
			if (most.has("rated_A")) {
				put(network, name, "Rated", most, "rated_A");
				put(network, name, "Used", 100 * larger(most) / number(most, "rated_A"));
			}
		}
		return found;
	}

	private static double larger(JsonObject span) {
		return Math.max(Math.abs(number(span, "supply_A")), Math.abs(number(span, "back_A")));
	}

	/** In a state only the fuses of supplies that are on are listed. */
	Map<String, List<Double>> fuses() {
		found.clear();
		Map<String, List<double[]>> byName = new TreeMap<>();
		for (JsonObject state : states) {
			List<JsonObject> fuses = items(state.getAsJsonObject("lowest"), "fuses");
			for (int i = 0; i < fuses.size(); i++) {
				JsonObject fuse = fuses.get(i);
				JsonObject asked = items(state, "breaking").get(i);
				String name = text(fuse, "owner") + (fuse.has("side") ? " " + text(fuse, "side").replace('-', ' ') : "");
				byName.computeIfAbsent(name, none -> new ArrayList<>()).add(new double[] { number(fuse.getAsJsonObject("fuse"), "rating_A"),
						number(fuse, "current_A"), number(at(state, "starting", "fuses", i), "current_A"),
						asked.has("asked_A") ? number(asked, "asked_A") : Double.POSITIVE_INFINITY });
			}
		}
		byName.forEach((name, each) -> {
			put("", name, "Rated", most(each, 0));
			put("", name, "Carries", most(each, 1));
			put("", name, "Starting", most(each, 2));
			put("", name, "Used", 100 * Math.max(most(each, 1), most(each, 2)) / most(each, 0));
			if (Double.isFinite(most(each, 3))) {
				put("", name, "Asked to break", most(each, 3));
			}
		});
		return found;
	}

	private static double most(List<double[]> rows, int column) {
		return rows.stream().mapToDouble(row -> row[column]).max().orElseThrow();
	}

	Map<String, List<Double>> sources() {
		found.clear();
		for (int i = 0; i < items(states.get(0).getAsJsonObject("lowest"), "sources").size(); i++) {
			int source = i;
			JsonObject most = at(least(states, state -> -number(at(state, "lowest", "sources", source), "current_A")), "lowest", "sources", source);
			put("", text(most, "source"), "Open voltage", most, "voltage_V");
			put("", text(most, "source"), "Gives", most, "current_A");
		}
		return found;
	}

	Map<String, List<Double>> simpleDrops() {
		found.clear();
		items(boat, "simpleDrops").stream().filter(each -> number(each, "length_m") > 0).forEach(each -> {
			put(text(each, "network"), text(each, "part"), "Length", each, "length_m");
			put(text(each, "network"), text(each, "part"), "Drop by formula", each, "drop_V");
		});
		return found;
	}

	Map<String, List<Double>> leads() {
		found.clear();
		items(boat, "leadSizings").forEach(each -> {
			put("", text(each, "of"), "Length", each.getAsJsonObject("lead"), "length_m");
			put("", text(each, "of"), "Sized for", each, "current_A");
		});
		return found;
	}

	/** The currents of all states. */
	Map<String, List<Double>> shortCircuits() {
		found.clear();
		states.forEach(state -> items(state, "shortCircuits").forEach(each -> put(text(each, "network"), text(each, "at"), "Current", each, "current_A")));
		return found;
	}

	private void put(String network, String name, String head, JsonObject of, String key) {
		put(network, name, head, number(of, key));
	}

	private void put(String network, String name, String head, double value) {
		found.computeIfAbsent(key(within("", network), within(network, name), head), none -> new ArrayList<>()).add(value);
	}

	/** A name without that of its network, or of the series. */
	private String within(String network, String name) {
		String home = !network.isEmpty() && name.startsWith(network + ".") ? network : text(boat, "series");
		return name.startsWith(home + ".") ? name.substring(home.length() + 1) : name;
	}

	private String networkOf(String element) {
		return items(boat, "lines").stream().map(each -> text(each, "network")).filter(each -> element.startsWith(each + ".")).findFirst().orElseThrow();
	}

	private static JsonObject least(List<JsonObject> states, Function<JsonObject, Double> value) {
		return states.stream().min(Comparator.comparing(value)).orElseThrow();
	}

	private static JsonObject at(JsonObject state, String flow, String list, int number) {
		return state.getAsJsonObject(flow).getAsJsonArray(list).get(number).getAsJsonObject();
	}

	private static List<JsonObject> items(JsonObject json, String name) {
		return StreamSupport.stream(json.getAsJsonArray(name).spliterator(), false).map(JsonElement::getAsJsonObject).toList();
	}

	private static double number(JsonObject json, String key) {
		return json.get(key).getAsDouble();
	}

	private static String text(JsonObject json, String key) {
		return json.get(key).getAsString();
	}
}

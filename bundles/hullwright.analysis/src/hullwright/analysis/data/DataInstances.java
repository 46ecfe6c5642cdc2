/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.data.Pgn;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The data instances of one kind of data on board: the tanks, the engines, the banks.
 *
 * @param pgn the message
 * @param instances its instances, the lowest first
 */
public record DataInstances(Pgn pgn, List<OfInstance> instances) {

	/**
	 * One instance.
	 *
	 * @param instance its number
	 * @param devices the qualified names of the devices that tell it of their own, in the order of the text; more than one is a
	 *        conflict only if nothing else tells them apart
	 */
	public record OfInstance(int instance, List<String> devices) {

		public OfInstance {
			devices = List.copyOf(devices);
		}
	}

	public DataInstances {
		instances = List.copyOf(instances);
	}

	/** The instances of all data, by the number of the message. */
	static List<DataInstances> of(StreamGraph graph) {
		Map<Pgn, Map<Integer, Set<String>>> all = new TreeMap<>(Comparator.comparingInt(Pgn::number).thenComparing(Pgn::title));
		for (Stream each : graph.all()) {
			if (each.how == ToldMessage.How.SENT && each.instance.isPresent() && each.use.message() instanceof Pgn pgn) {
				all.computeIfAbsent(pgn, none -> new TreeMap<>()).computeIfAbsent(each.instance.get(), none -> new LinkedHashSet<>()).add(each.teller());
			}
		}
		return all.entrySet().stream().map(pgn -> new DataInstances(pgn.getKey(), pgn.getValue().entrySet().stream()
				.map(each -> new OfInstance(each.getKey(), List.copyOf(each.getValue()))).toList())).toList();
	}
}

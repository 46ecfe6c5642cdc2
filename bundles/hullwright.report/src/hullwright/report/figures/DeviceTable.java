/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import hullwright.analysis.electrics.BoatElectrics;
import hullwright.analysis.electrics.StateElectrics;
import hullwright.analysis.power.DeviceReading;
import hullwright.network.Network;
import hullwright.quantity.Current;
import hullwright.quantity.Voltage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The voltages of the devices of a network, those with the least to spare first: of all power states the worst figure of each,
 * starting included in what is left above the lowest voltage that a device works at.
 */
final class DeviceTable {

	private record Row(String device, Optional<Voltage> starting, Optional<Voltage> margin, DeviceReading lowest, DeviceReading nominal, Voltage highest, Voltage shift,
			StateElectrics state) {
	}

	private final List<Row> rows = new ArrayList<>();
	private final List<String> unfed = new ArrayList<>();
	private final Wording wording;
	private final Network network;
	private final boolean severalStates;

	DeviceTable(BoatElectrics boat, Network network, Wording wording) {
		this.wording = wording;
		this.network = network;
		severalStates = boat.states().size() > 1;
		if (boat.states().isEmpty()) {
			return;
		}
		List<DeviceReading> devices = boat.states().get(0).lowest().devices();
		for (int i = 0; i < devices.size(); i++) {
			if (devices.get(i).network().equals(network.name())) {
				add(boat, i, devices.get(i).device());
			}
		}
		// those that no catalog gives a limit come last, by their voltage
		rows.sort(Comparator.comparingDouble((Row row) -> row.margin.map(Voltage::volts).orElse(Double.MAX_VALUE))
				.thenComparing(row -> row.lowest.voltage()));
	}

	private void add(BoatElectrics boat, int number, String device) {
		List<StateElectrics> fed = boat.states().stream().filter(state -> state.lowest().devices().get(number).fed()).toList();
		if (fed.isEmpty()) {
			unfed.add(device);
			return;
		}
		StateElectrics worst = fed.stream().min(Comparator.comparing(state -> state.lowest().devices().get(number).voltage())).orElseThrow();
		Voltage starting = fed.stream().map(state -> state.starting().devices().get(number).voltage()).min(Voltage::compareTo).orElseThrow();
		Voltage highest = fed.stream().map(state -> state.highest().devices().get(number).voltage()).max(Voltage::compareTo).orElseThrow();
		Voltage shift = fed.stream().map(state -> state.lowest().devices().get(number).shift())
				.max(Comparator.comparing(each -> Math.abs(each.volts()))).orElseThrow();
		Optional<Voltage> margin = fed.stream().flatMap(state -> Stream.of(state.lowest(), state.starting()))
				.flatMap(flow -> flow.devices().get(number).aboveLowest().stream()).min(Voltage::compareTo);
		rows.add(new Row(device, Optional.of(starting), margin, worst.lowest().devices().get(number), worst.nominal().devices().get(number), highest, shift, worst));
	}

	/** The devices that no power state feeds. */
	List<String> unfed() {
		return unfed;
	}

	TextTable table() {
		TextTable table = TextTable.worstFirst("Device", ">Lowest", ">Starting", ">Usual", ">Highest", ">Above limit", ">Drop", ">Return", ">Draws", "Worst in");
		for (Row row : rows) {
			Current draws = row.lowest.current();
			table.row(wording.name(row.device, network.name()), Wording.volts(row.lowest.voltage()), Wording.volts(row.starting),
					Wording.volts(row.nominal.voltage()), Wording.volts(row.highest), Wording.volts(row.margin),
					Wording.volts(row.lowest.drop()), Wording.volts(row.shift), Wording.amperes(draws),
					severalStates ? Wording.state(row.state.state()) : "");
		}
		return table;
	}
}

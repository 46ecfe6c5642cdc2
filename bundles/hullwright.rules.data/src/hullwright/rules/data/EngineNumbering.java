/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.data.DataInstances;
import hullwright.network.FittedDevice;
import hullwright.network.Origin;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.SetProperty;
import java.util.List;
import java.util.Optional;

/**
 * The engines of a boat are not numbered as displays expect it: from 0, and of two the port one first.
 */
public final class EngineNumbering implements BoatRule {

	/** "Engine parameters, rapid update": what every gauge of engines shows. */
	private static final int ENGINE = 127488;

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/engine-numbering", "Engines not numbered as displays expect", Severity.WARNING,
				"{numbers}; displays take {usual}",
				"from memory: 0 is the port or the only engine, 1 the starboard one; glossary of the open NMEA 2000 library for C++ (PGN-B): "
						+ "instances count from 0").silencedBy("data/same-instance");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		OnBoard onBoard = OnBoard.of(boat);
		return boat.figures().data().instances().stream().filter(each -> each.pgn().number() == ENGINE).map(DataInstances::instances)
				.filter(engines -> engines.stream().allMatch(each -> each.devices().size() == 1))
				.flatMap(engines -> finding(boat, onBoard, engines).stream()).toList();
	}

	private static Optional<Finding> finding(BoatUnderCheck boat, OnBoard onBoard, List<DataInstances.OfInstance> engines) {
		int first = engines.get(0).instance();
		Origin device = onBoard.origin(engines.get(0).devices().get(0));
		if (first > 0) {
			Finding.Builder finding = boat.advice(device).value("numbers", numbered(device, first))
					.value("usual", engines.size() == 1 ? "0 for the only engine" : "0 for the first engine");
			if (engines.size() == 1) {
				finding.fix(new Fix("Set " + device.simpleName() + " to instance 0", Fix.Reach.DESIGN, List.of(new SetProperty(device, "instance", "0"))));
			}
			return Optional.of(finding.build());
		}
		if (engines.size() == 2 && sideOf(onBoard, engines.get(0)) == Side.STARBOARD && sideOf(onBoard, engines.get(1)) == Side.PORT) {
			Origin other = onBoard.origin(engines.get(1).devices().get(0));
			int second = engines.get(1).instance();
			return Optional.of(boat.finding(device).value("numbers", numbered(device, first) + " and " + numbered(other, second))
					.value("usual", first + " for port and " + second + " for starboard")
					.covers(List.of(other.element()))
					.fix(new Fix("Exchange the instances", Fix.Reach.DESIGN,
							List.of(new SetProperty(device, "instance", String.valueOf(second)), new SetProperty(other, "instance", String.valueOf(first)))))
					.build());
		}
		return Optional.empty();
	}

	private static String numbered(Origin device, int instance) {
		return device.simpleName() + " is engine " + instance;
	}

	private static Side sideOf(OnBoard onBoard, DataInstances.OfInstance engine) {
		return onBoard.device(engine.devices().get(0)).map(FittedDevice::origin).map(Origin::simpleName).map(Side::named).orElse(Side.UNKNOWN);
	}
}

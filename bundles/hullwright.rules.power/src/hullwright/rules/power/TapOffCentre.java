/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.electrics.StateElectrics;
import hullwright.analysis.power.TapPlace;
import hullwright.network.PlacesInText;
import hullwright.quantity.Voltage;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.Parameter;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.InsertInBackbone.Side;
import hullwright.rules.edit.MoveInBackbone;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A supply enters far from where it would serve best, and the margin is short.
 */
public final class TapOffCentre implements BoatRule {

	private static final String SOURCE = "display manuals (N2-E) and article of a gateway maker (N2-F): power in the middle, balanced, heavy loads near the tap";
	private static final Parameter GAIN = new Parameter("gain", new Voltage(0.3), "from which gain on a move is worth a word", "common practice");
	private static final Parameter MARGIN = new Parameter("margin", new Voltage(1), "a margin above which nobody needs to move anything", "common practice");

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/tap-off-centre", "Supply enters far from its best place", Severity.ADVICE,
				"beside {best}, {supply} would bring {gain} more to the weakest device than at {present}", SOURCE).with(GAIN, MARGIN);
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		Voltage least = boat.parameter("gain", Voltage.class);
		Voltage margin = boat.parameter("margin", Voltage.class);
		PlacesInText places = new PlacesInText(boat.boat());
		Map<String, Finding> findings = new LinkedHashMap<>();
		for (StateElectrics state : boat.figures().electrics().states()) {
			for (TapPlace tap : state.taps()) {
				boolean isShort = state.lowest().devices().stream()
						.anyMatch(device -> device.network().equals(tap.network()) && device.fed() && device.aboveLowest().filter(margin::exceeds).isPresent());
				if (isShort && !tap.best().equals(tap.present()) && tap.gain().exceeds(least)) {
					findings.putIfAbsent(tap.present(), finding(boat, places, tap));
				}
			}
		}
		return List.copyOf(findings.values());
	}

	private static Finding finding(BoatUnderCheck boat, PlacesInText places, TapPlace tap) {
		Finding.Builder finding = boat.finding(places.of(tap.present()))
				.value("best", ShortName.of(tap.best()))
				.value("supply", ShortName.of(tap.supply()))
				.value("gain", tap.gain())
				.value("present", ShortName.of(tap.present()));
		boolean inWalk = boat.boat().networks().stream().flatMap(network -> network.backbones().stream()).flatMap(backbone -> backbone.elements().stream())
				.anyMatch(element -> element.name().equals(tap.present()));
		if (inWalk) {
			finding.fix(new Fix("Move " + ShortName.of(tap.present()) + " beside " + ShortName.of(tap.best()), Fix.Reach.DESIGN,
					List.of(new MoveInBackbone(places.of(tap.present()), places.of(tap.best()), Side.AFTER))));
		}
		return finding.build();
	}
}

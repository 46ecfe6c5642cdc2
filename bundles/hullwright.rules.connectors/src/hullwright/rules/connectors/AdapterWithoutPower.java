/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.connectors;

import hullwright.analysis.wiring.CutOff;
import hullwright.network.Element;
import hullwright.network.FittedDevice;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.network.PartsOnOffer;
import hullwright.network.part.Adapter;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.ReplacePart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Devices that live on the network hang behind an adapter that does not pass the supply on.
 */
public final class AdapterWithoutPower implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("connectors/adapter-without-power", "Adapter without power", Severity.ERROR,
				"adapter {adapter} does not pass the supply on, and no other supply reaches {devices}",
				"public installation manual of an autopilot computer (N2-P): where networks of two families are joined, only one side feeds; an adapter for that has no supply conductor");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		List<CutOff> cuts = boat.figures().cutOff();
		for (Network network : boat.boat().networks()) {
			network.backbones().forEach(backbone -> backbone.elements().forEach(element ->
					look(boat, cuts, element, boat.finding(element.origin()), findings)));
			network.drops().forEach(drop -> drop.legs().forEach(leg ->
					look(boat, cuts, leg, boat.finding(shownAt(drop.origin(), leg)).key("adapter"), findings)));
		}
		return findings;
	}

	private static Origin shownAt(Origin drop, Element leg) {
		return drop.shownAt(leg.origin());
	}

	private static void look(BoatUnderCheck boat, List<CutOff> cuts, Element element, Finding.Builder finding, List<Finding> findings) {
		if (!(element instanceof Fitting fitting) || !(fitting.part() instanceof Adapter adapter) || adapter.carriesPower()) {
			return;
		}
		cuts.stream().filter(cut -> cut.part().equals(element.name())).findFirst().ifPresent(cut -> {
			finding.value("adapter", adapter.identity().name())
					.value("devices", cut.devices().stream().map(device -> device.origin().simpleName()).collect(Collectors.joining(", ")))
					.covers(cut.devices().stream().map(FittedDevice::name).toList());
			withPower(boat.boat().partsOnOffer(), adapter).ifPresent(other -> finding.fix(new Fix("Replace " + adapter.identity().name() + " by "
					+ other.identity().name() + ", which carries power", Fix.Reach.DESIGN,
					List.of(new ReplacePart(element.origin(), adapter.identity(), other.identity())))));
			findings.add(finding.build());
		});
	}

	private static Optional<Adapter> withPower(PartsOnOffer offer, Adapter adapter) {
		return offer.of(Adapter.class).stream().filter(other -> other.carriesPower() && other.ends().equals(adapter.ends())).findFirst();
	}
}

/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.series;

import hullwright.network.Backbone;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.Feed;
import hullwright.network.FittedDevice;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Demand;
import hullwright.rules.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Looks for the things of which the text does not say what the house demands.
 */
final class SaidOfEvery {

	private final BoatUnderCheck boat;
	private final Demand.What what;
	private final List<Finding> findings = new ArrayList<>();

	SaidOfEvery(BoatUnderCheck boat, Demand.What what) {
		this.boat = boat;
		this.what = what;
	}

	/** Devices that say nothing of it. */
	SaidOfEvery devices(Predicate<FittedDevice> saysNothing, Function<FittedDevice, Finding.Builder> finding) {
		boat.house().demand(what, Demand.On.DEVICE).ifPresent(demand -> boat.boat().fittedDevices().stream().filter(saysNothing)
				.forEach(device -> findings.add(finding.apply(device).source(demand.source()).build())));
		return this;
	}

	/** Fittings of backbones and drops that say nothing of it; a device that the backbone runs through counts as a device. */
	SaidOfEvery fittings(Predicate<Fitting> saysNothing) {
		boat.house().demand(what, Demand.On.PART).ifPresent(demand -> {
			for (Network network : boat.boat().networks()) {
				network.backbones().stream().map(Backbone::elements).forEach(each -> look(each, saysNothing, demand));
				network.drops().stream().map(Drop::legs).forEach(each -> look(each, saysNothing, demand));
			}
		});
		return this;
	}

	private void look(List<Element> elements, Predicate<Fitting> saysNothing, Demand demand) {
		elements.stream().filter(Fitting.class::isInstance).map(Fitting.class::cast)
				.filter(fitting -> fitting.details().device().isEmpty() && saysNothing.test(fitting))
				.forEach(fitting -> add(fitting.origin(), fitting.origin().simpleName(), demand));
	}

	/** Feeds through a port that say nothing of it. */
	SaidOfEvery feeds(Predicate<Feed> saysNothing) {
		boat.house().demand(what, Demand.On.FEED).ifPresent(demand -> boat.boat().networks().stream().flatMap(network -> network.feeds().stream())
				.filter(saysNothing).forEach(feed -> add(feed.origin(), "the feed at " + Origin.nowhere(feed.from().part()).simpleName() + "." + feed.from().port().orElse(0), demand)));
		return this;
	}

	private void add(Origin place, String name, Demand demand) {
		findings.add(boat.finding(place).value("element", name).source(demand.source()).build());
	}

	/** What was found. */
	List<Finding> findings() {
		return List.copyOf(findings);
	}
}

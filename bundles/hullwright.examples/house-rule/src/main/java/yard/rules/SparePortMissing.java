/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package yard.rules;

import hullwright.network.Backbone;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.Feed;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.part.Tee;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.Parameter;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A rule of an invented yard: a block with several ports keeps one free, for what the owner adds later.
 */
public final class SparePortMissing implements BoatRule {

	/** Tees with a single port are there for one device; only blocks are asked. */
	private static final int BLOCK = 2;

	@Override
	public RuleDescription description() {
		return RuleDescription.of("yard/spare-port-missing", "Spare port missing", Severity.WARNING,
				"{used} of {ports} ports of {block} are taken; the yard keeps {spare} free", "house rule of an invented yard")
				.with(new Parameter("spare", 1, "how many ports of each block stay free", "house rule of an invented yard"));
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		int spare = boat.parameter("spare", Integer.class);
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			for (Backbone backbone : network.backbones()) {
				for (Element element : backbone.elements()) {
					if (element instanceof Fitting fitting && fitting.part() instanceof Tee tee && tee.ports().size() >= BLOCK) {
						long used = used(network, fitting.name());
						if (tee.ports().size() - used < spare) {
							findings.add(boat.finding(fitting.origin()).value("used", (int) used).value("ports", tee.ports().size())
									.value("block", fitting.origin().simpleName()).value("spare", spare).build());
						}
					}
				}
			}
		}
		return findings;
	}

	private static long used(Network network, String block) {
		Stream<String> drops = network.drops().stream().map(Drop::from).map(port -> port.part());
		Stream<String> feeds = network.feeds().stream().map(Feed::from).map(port -> port.part());
		Stream<String> joins = network.joins().stream().flatMap(join -> Stream.of(join.from(), join.to())).map(port -> port.part());
		return Stream.of(drops, feeds, joins).flatMap(each -> each).filter(block::equals).count();
	}
}

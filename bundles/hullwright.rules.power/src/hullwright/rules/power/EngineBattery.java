/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.network.power.Bank;
import hullwright.network.power.Supply;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.SetProperty;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A network is fed from the bank that starts the engines, though there is another.
 */
public final class EngineBattery implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/engine-battery", "Fed from the engine's battery", Severity.WARNING,
				"{supply} feeds the network from {bank}, which starts engines; {other} does not",
				"display installation manuals (N2-E) and general cabling guidance (EMC-A): electronics not on the battery that starts the engine");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		Optional<Bank> other = boat.boat().power().banks().stream().filter(bank -> !bank.startsEngines()).findFirst();
		List<Finding> findings = new ArrayList<>();
		for (Supply supply : FeedingSupplies.of(boat)) {
			SourceChain.of(boat.boat(), supply.name()).bank().filter(Bank::startsEngines).filter(bank -> other.isPresent())
					.ifPresent(bank -> findings.add(finding(boat, supply, bank, other.get())));
		}
		return findings;
	}

	private static Finding finding(BoatUnderCheck boat, Supply supply, Bank bank, Bank other) {
		Finding.Builder finding = boat.finding(supply.origin())
				.value("supply", ShortName.of(supply.name()))
				.value("bank", ShortName.of(bank.name()))
				.value("other", ShortName.of(other.name()));
		if (supply.from().filter(bank.name()::equals).isPresent()) {
			finding.fix(new Fix("Feed " + ShortName.of(supply.name()) + " from " + ShortName.of(other.name()), Fix.Reach.DESIGN,
					List.of(new SetProperty(supply.origin(), "from", ShortName.of(other.name())))));
		}
		return finding.build();
	}
}

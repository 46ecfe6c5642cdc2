/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.referee;

import java.util.List;

/**
 * A rough upper bound of what the wires of a network have for resistance, to make up loads that it can feed.
 */
final class LoopResistance {

	/** Copper at 60 °C against 20 °C. */
	private static final double HOT = 1.16;

	private LoopResistance() {
	}

	/** Ohms there and back: the whole backbone with its contacts, the supply's wire and the longest drop. */
	static double most(DescribedBoat.Net net) {
		double drop = net.drops().stream().mapToDouble(each -> of(each.legs())).max().orElse(0);
		double feed = net.feeds().stream().mapToDouble(each -> of(each.legs())).max().orElse(0);
		double device = 6 * PartKind.Wire.ofGauge(22).ohmsPerMetre();
		double supply = 0.15;
		return 2 * (HOT * (of(net.backbone()) + drop + feed + device) + supply);
	}

	private static double of(List<DescribedBoat.Item> items) {
		return items.stream().mapToDouble(item -> 0.025 + (item instanceof DescribedBoat.Run run
				? run.length() * run.kind().power().orElse(PartKind.Wire.ofGauge(22)).ohmsPerMetre()
				: 0)).sum();
	}
}

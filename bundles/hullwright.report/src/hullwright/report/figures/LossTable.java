/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import hullwright.analysis.electrics.BoatElectrics;
import hullwright.analysis.fault.Loss;
import java.util.Comparator;
import java.util.List;

/**
 * What is lost with one thing: what takes most with it first.
 */
final class LossTable {

	private final List<Loss> losses;
	private final Wording wording;

	LossTable(BoatElectrics boat, Wording wording) {
		this.wording = wording;
		losses = boat.losses().stream().sorted(Comparator.comparingInt(LossTable::weight).reversed()).toList();
	}

	private static int weight(Loss loss) {
		return loss.withoutPower().size() + loss.withoutData().size() + 10 * loss.parted().size();
	}

	TextTable table() {
		TextTable table = TextTable.worstFirst("If this fails", "Kind", ">Without power", ">Cut off", "And");
		for (Loss each : losses) {
			String home = each.element().substring(0, Math.max(0, each.element().lastIndexOf('.')));
			table.row(wording.name(each.element()) + each.other().map(other -> " | " + wording.name(other, home)).orElse("") + Wording.side(each.side()), word(each.what()),
					count(each.withoutPower()), count(each.withoutData()), consequence(each));
		}
		return table;
	}

	private static String count(List<String> devices) {
		return devices.isEmpty() ? "" : devices.size() + (devices.size() == 1 ? " device" : " devices");
	}

	private String consequence(Loss loss) {
		if (!loss.parted().isEmpty()) {
			return "nothing passes between " + String.join(" and ", loss.parted().stream().map(wording::name).toList());
		}
		return loss.unterminated().isEmpty() ? "" : "the line loses a terminator";
	}

	private static String word(Loss.What what) {
		return switch (what) {
		case FUSE -> "fuse";
		case JOINT -> "joint";
		case CABLE -> "cable";
		case BRIDGE -> "bridge";
		case SUPPLY -> "supply";
		case SOURCE -> "source";
		};
	}
}

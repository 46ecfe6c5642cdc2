/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.messages;

import hullwright.spec.SpecPackage;
import java.util.Map;
import org.eclipse.emf.ecore.EClass;

/**
 * What people call the things that a text declares.
 */
public final class SpecWords {

	private static final Map<EClass, String> WORDS = Map.ofEntries(
			Map.entry(SpecPackage.Literals.FAMILY, "connector family"),
			Map.entry(SpecPackage.Literals.PART_TYPE, "part"),
			Map.entry(SpecPackage.Literals.CABLE_TYPE, "cable"),
			Map.entry(SpecPackage.Literals.TERMINATOR_TYPE, "terminator"),
			Map.entry(SpecPackage.Literals.TEE_TYPE, "tee"),
			Map.entry(SpecPackage.Literals.TAP_TYPE, "tap"),
			Map.entry(SpecPackage.Literals.ISOLATOR_TYPE, "isolator"),
			Map.entry(SpecPackage.Literals.CAP_TYPE, "cap"),
			Map.entry(SpecPackage.Literals.CORD_TYPE, "cord"),
			Map.entry(SpecPackage.Literals.FUSE_TYPE, "fuse"),
			Map.entry(SpecPackage.Literals.FEED_THROUGH_TYPE, "feed-through"),
			Map.entry(SpecPackage.Literals.ADAPTER_TYPE, "adapter"),
			Map.entry(SpecPackage.Literals.DEVICE_TYPE, "device"),
			Map.entry(SpecPackage.Literals.MESSAGE, "message"),
			Map.entry(SpecPackage.Literals.PGN, "PGN"),
			Map.entry(SpecPackage.Literals.SENTENCE, "sentence"),
			Map.entry(SpecPackage.Literals.KEY_FIELD, "key field"),
			Map.entry(SpecPackage.Literals.KEY_VALUE, "key value of this message"),
			Map.entry(SpecPackage.Literals.PORT, "port of this device"),
			Map.entry(SpecPackage.Literals.DEVICE_PORT, "port"),
			Map.entry(SpecPackage.Literals.LINE_PORT, "serial line"),
			Map.entry(SpecPackage.Literals.WIRELESS_PORT, "radio"),
			Map.entry(SpecPackage.Literals.OPTION, "option"),
			Map.entry(SpecPackage.Literals.PLACE, "place"),
			Map.entry(SpecPackage.Literals.BULKHEAD, "bulkhead"),
			Map.entry(SpecPackage.Literals.ROUTE, "route"),
			Map.entry(SpecPackage.Literals.SWITCH, "switch"),
			Map.entry(SpecPackage.Literals.POWER_SOURCE, "bank, converter or supply"),
			Map.entry(SpecPackage.Literals.BANK, "bank"),
			Map.entry(SpecPackage.Literals.CONVERTER, "converter"),
			Map.entry(SpecPackage.Literals.POWER_STATE, "power state"),
			Map.entry(SpecPackage.Literals.SUPPLY_SOURCE, "supply"),
			Map.entry(SpecPackage.Literals.DATA_NETWORK, "network"),
			Map.entry(SpecPackage.Literals.BACKBONE_PART, "part of this network's backbone"),
			Map.entry(SpecPackage.Literals.BACKBONE_CABLE, "cable of this network's backbone"),
			Map.entry(SpecPackage.Literals.BACKBONE_ITEM, "part or cable of this network's backbone"),
			Map.entry(SpecPackage.Literals.PORT_HOLDER, "part of this network"),
			Map.entry(SpecPackage.Literals.PART_LEG, "part of a drop"),
			Map.entry(SpecPackage.Literals.FEED, "feed"),
			Map.entry(SpecPackage.Literals.SERIAL_LINE, "serial line"),
			Map.entry(SpecPackage.Literals.WIRELESS_HOP, "wireless hop"),
			Map.entry(SpecPackage.Literals.NAMED, "device, part or line"),
			Map.entry(SpecPackage.Literals.DEVICE, "device"),
			Map.entry(SpecPackage.Literals.HULL, "hull"),
			Map.entry(SpecPackage.Literals.CATALOG, "catalog"),
			Map.entry(SpecPackage.Literals.SERIES, "series"),
			Map.entry(SpecPackage.Literals.PROFILE, "profile"));

	private SpecWords() {
	}

	/** The word for a kind of thing, in the singular and without an article. */
	public static String of(EClass type) {
		return WORDS.getOrDefault(type, "item");
	}

	/** The word for a kind of thing with its indefinite article: a tee, an adapter. */
	public static String oneOf(EClass type) {
		String word = of(type);
		return ("aeiou".indexOf(word.charAt(0)) >= 0 ? "an " : "a ") + word;
	}
}

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
			Map.entry(SpecPackage.Literals.FEED_THROUGH_TYPE, "feed-through"),
			Map.entry(SpecPackage.Literals.ADAPTER_TYPE, "adapter"),
			Map.entry(SpecPackage.Literals.DEVICE_TYPE, "device"),
			Map.entry(SpecPackage.Literals.OPTION, "option"),
			Map.entry(SpecPackage.Literals.PLACE, "place"),
			Map.entry(SpecPackage.Literals.SUPPLY_SOURCE, "supply"),
			Map.entry(SpecPackage.Literals.DATA_NETWORK, "network"),
			Map.entry(SpecPackage.Literals.BACKBONE_PART, "part of this network's backbone"),
			Map.entry(SpecPackage.Literals.BACKBONE_CABLE, "cable of this network's backbone"),
			Map.entry(SpecPackage.Literals.DEVICE, "device of this network"),
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

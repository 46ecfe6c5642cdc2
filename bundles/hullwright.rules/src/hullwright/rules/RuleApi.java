/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules;

import java.util.List;
import java.util.Set;

/**
 * What a rule of a house may use, whoever loads it. A test holds this against the manifests of the bundles.
 */
public final class RuleApi {

	/** The bundle whose version is the version of the whole API. */
	public static final String BUNDLE = "hullwright.rules";

	/** The version of the API. */
	public static final String VERSION = "0.1.0";

	/** The bundles that the API consists of. */
	public static final List<String> BUNDLES = List.of(BUNDLE, "hullwright.analysis", "hullwright.network", "hullwright.quantity");

	/** The packages that these bundles export; others are not open to a house plugin. */
	public static final Set<String> PACKAGES = Set.of(
			"hullwright.quantity",
			"hullwright.network", "hullwright.network.data", "hullwright.network.layout", "hullwright.network.part", "hullwright.network.power",
			"hullwright.analysis", "hullwright.analysis.circuit", "hullwright.analysis.conductor", "hullwright.analysis.data",
			"hullwright.analysis.electrics", "hullwright.analysis.fault", "hullwright.analysis.line", "hullwright.analysis.power",
			"hullwright.analysis.serial", "hullwright.analysis.traffic", "hullwright.analysis.wiring",
			"hullwright.rules", "hullwright.rules.edit", "hullwright.rules.report");

	private RuleApi() {
	}
}

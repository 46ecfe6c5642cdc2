/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.messages;

import static java.util.Map.entry;

import java.util.Map;

/**
 * Our names for the key fields of the dataset.
 */
final class KeyNames {

	private static final Map<String, String> OURS = Map.ofEntries(
			entry("instance", "instance"),
			entry("dataSourceInstance", "instance"),
			entry("source", "source"),
			entry("temperatureSource", "source"),
			entry("reference", "reference"),
			entry("dcType", "equipment"),
			entry("batteryInstance", "battery"),
			entry("acInstance", "acSide"),
			entry("dcInstance", "dcSide"),
			entry("generatorInstance", "generator"),
			entry("inverterMotorIdentifier", "motor"),
			entry("energyStorageIdentifier", "storage"),
			entry("hvacIdentifier", "airConditioner"),
			entry("stationId", "station"),
			entry("userId", "mmsi"),
			entry("sourceId", "mmsi"),
			entry("mmsiOfVesselOfOrigin", "mmsi"),
			entry("mothershipUserId", "motherShip"),
			entry("destinationId", "destination"),
			entry("destinationId1", "destination"),
			entry("destinationIdA", "destination"),
			entry("destinationId2", "secondDestination"),
			entry("destinationIdB", "secondDestination"));

	private KeyNames() {
	}

	/** Our name for a field; the dataset's own where we have none, so that a new key field shows up as a difference. */
	static String ofField(String field) {
		return OURS.getOrDefault(field, field);
	}
}

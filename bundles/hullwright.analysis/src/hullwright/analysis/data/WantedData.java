/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.data.Wanting;
import java.util.List;

/**
 * What a device cannot do without, and what comes of it.
 *
 * @param device the qualified name of the device
 * @param wanting what it wants; any one of its messages will do
 * @param paths the ways by which such messages reach it
 * @param received what reaches it, datum by datum, and whose it takes; what it is set not to listen to is among it
 * @param verdict what comes of it
 * @param elsewhere who tells such messages, or the same in other words or by an obsolete message, where the device does not hear them, if it hears none
 */
public record WantedData(String device, Wanting wanting, List<DataPath> paths, List<ReceivedData> received, Verdict verdict,
		List<DataSource> elsewhere) {

	/** What comes of a want. */
	public enum Verdict {
		/** It comes, and often enough. */
		MET,
		/** It comes, but on events, or nobody says how often; and it must come often enough. */
		UNTIMED,
		/** The device tells itself. */
		OWN,
		/** It comes, but not as often as it must. */
		TOO_SLOW,
		/** Nobody on board tells it. */
		NO_SOURCE,
		/** Only a message is told whose place it has taken. */
		ONLY_OBSOLETE,
		/** It is told in other words, which a gateway hears that has no map from them. */
		NOT_TURNED,
		/** Somebody tells it, but it does not reach the device. */
		NOT_REACHED,
		/** The device is set to listen to a source from which it does not come. */
		TAKEN_SOURCE_SILENT
	}

	public WantedData {
		paths = List.copyOf(paths);
		received = List.copyOf(received);
		elsewhere = List.copyOf(elsewhere);
	}

	/** Whether the device gets what it wants, as far as anybody says how often. */
	public boolean isMet() {
		return verdict == Verdict.MET || verdict == Verdict.UNTIMED || verdict == Verdict.OWN;
	}

	/** The sources from which it comes, each once. */
	public List<DataSource> sources() {
		return paths.stream().map(DataPath::source).distinct().toList();
	}
}

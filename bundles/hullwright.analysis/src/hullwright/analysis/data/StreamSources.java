/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Where the data of streams begin.
 */
final class StreamSources {

	private final Map<Stream, List<DataSource>> known = new HashMap<>();

	/** The sources of a stream, in the order in which they were found. */
	List<DataSource> of(Stream stream) {
		return known.computeIfAbsent(stream.origin, StreamSources::search);
	}

	private static List<DataSource> search(Stream stream) {
		if (stream.how == ToldMessage.How.SENT) {
			return List.of(source(stream));
		}
		Set<DataSource> sources = new LinkedHashSet<>();
		Set<Stream> seen = new LinkedHashSet<>(Set.of(stream));
		Deque<Stream> open = new ArrayDeque<>(seen);
		while (!open.isEmpty()) {
			Stream next = open.remove();
			if (next.how == ToldMessage.How.SENT) {
				sources.add(source(next));
			}
			next.inputs.forEach(alternatives -> alternatives.forEach(each -> {
				if (seen.add(each.origin)) {
					open.add(each.origin);
				}
			}));
		}
		return List.copyOf(sources);
	}

	private static DataSource source(Stream sent) {
		return new DataSource(sent.teller(), sent.use, sent.instance);
	}
}

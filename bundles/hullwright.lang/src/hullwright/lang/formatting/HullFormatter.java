/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.formatting;

import com.google.inject.Inject;
import java.util.Collection;
import java.util.List;
import org.eclipse.xtext.formatting2.FormatterRequest;
import org.eclipse.xtext.formatting2.IFormatter2;
import org.eclipse.xtext.formatting2.regionaccess.ITextRegionAccess;
import org.eclipse.xtext.formatting2.regionaccess.ITextReplacement;
import org.eclipse.xtext.util.ITextRegion;

/**
 * The canonical layout for editors. What an editor wishes for indentation does not count: the layout is one for all.
 */
public final class HullFormatter implements IFormatter2 {

	private final CanonicalLayout layout;

	@Inject
	HullFormatter(CanonicalLayout layout) {
		this.layout = layout;
	}

	@Override
	public List<ITextReplacement> format(FormatterRequest request) {
		ITextRegionAccess text = request.getTextRegionAccess();
		return layout.changes(text.regionForDocument().getText()).stream()
				.filter(gap -> touchesOne(gap, request.getRegions()))
				.map(gap -> text.getRewriter().createReplacement(gap.offset(), gap.end() - gap.offset(), gap.replacement()))
				.toList();
	}

	private static boolean touchesOne(Gap gap, Collection<ITextRegion> regions) {
		return regions.isEmpty() || regions.stream().anyMatch(region -> gap.offset() <= region.getOffset() + region.getLength() && gap.end() >= region.getOffset());
	}
}

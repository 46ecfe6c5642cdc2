/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.messages;

import com.google.inject.Inject;
import hullwright.lang.LanguageProblem;
import hullwright.lang.imports.VisibleCatalogs;
import hullwright.lang.scoping.HullScopeProvider;
import hullwright.lang.scoping.ReferencedKind;
import hullwright.spec.Catalog;
import hullwright.spec.Named;
import hullwright.spec.SpecPackage;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.diagnostics.DiagnosticMessage;
import org.eclipse.xtext.diagnostics.Severity;
import org.eclipse.xtext.linking.impl.LinkingDiagnosticMessageProvider;

/**
 * Says which kind of thing has no such name, where it was looked for, and which name was perhaps meant.
 */
public class HullLinkingMessages extends LinkingDiagnosticMessageProvider {

	@Inject
	private HullScopeProvider scopes;

	@Inject
	private VisibleCatalogs catalogs;

	@Override
	public DiagnosticMessage getUnresolvedProxyMessage(ILinkingDiagnosticContext context) {
		EReference reference = context.getReference();
		EObject from = context.getContext();
		String name = context.getLinkText();
		List<Catalog> homes = catalogs.declaring(from, name);
		if (homes.size() > 1 && isCatalogEntry(reference.getEReferenceType())) {
			String choices = homes.stream().map(home -> home.getName() + "." + name).collect(Collectors.joining(" or "));
			return problem("'" + name + "' is in more than one catalog; write " + choices, Optional.empty());
		}
		EClass wanted = ReferencedKind.of(from, reference);
		if (homes.isEmpty() && isCatalogEntry(wanted) && catalogs.someImportFailed(from)) {
			// the name may well stand there; the import is told, and one cause is told once
			return null;
		}
		if (homes.size() == 1 && isCatalogEntry(wanted)) {
			return problem("'" + name + "' is " + SpecWords.oneOf(kindOf(homes.get(0), name)) + ", but " + SpecWords.oneOf(wanted)
					+ " is expected here", Optional.empty());
		}
		Optional<String> near = NearestName.to(name, StreamSupport
				.stream(scopes.getScope(from, reference).getAllElements().spliterator(), false)
				.map(description -> description.getName().toString()));
		return problem("no " + SpecWords.of(wanted) + " '" + name + "'" + whereLookedFor(from, reference)
				+ near.map(found -> "; did you mean '" + found + "'?").orElse(""), near);
	}

	private static DiagnosticMessage problem(String text, Optional<String> near) {
		return new DiagnosticMessage(text, Severity.ERROR, LanguageProblem.UNKNOWN_NAME, near.orElse(""));
	}

	private String whereLookedFor(EObject from, EReference reference) {
		if (!isCatalogEntry(reference.getEReferenceType())) {
			return "";
		}
		if (reference.getEReferenceType() == SpecPackage.Literals.MESSAGE
				&& catalogs.from(from).stream().allMatch(catalog -> catalog.getMessages().isEmpty())) {
			return "; PGNs and sentences come with: import \"standard:messages\"";
		}
		List<String> names = catalogs.from(from).stream().map(Catalog::getName).distinct().toList();
		return names.isEmpty() ? "; this file imports no catalog" : " in " + String.join(" or ", names);
	}

	private static EClass kindOf(Catalog home, String name) {
		return Stream.of(home.getParts(), home.getFamilies(), home.getMessages())
				.<Named>flatMap(List::stream)
				.filter(entry -> name.equals(entry.getName()))
				.map(EObject::eClass)
				.findFirst()
				.orElseThrow();
	}

	private static boolean isCatalogEntry(EClass type) {
		return type == SpecPackage.Literals.FAMILY || type == SpecPackage.Literals.MESSAGE || SpecPackage.Literals.PART_TYPE.isSuperTypeOf(type);
	}
}

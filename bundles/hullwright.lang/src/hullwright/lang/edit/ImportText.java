/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.edit;

import hullwright.spec.Import;
import hullwright.spec.SpecFile;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * Writes imports at the head of a file.
 */
public final class ImportText {

	private ImportText() {
	}

	/** Imports a file or a built-in catalog: below the other imports, or else before the first declaration and what is said of it. */
	public static TextEdit add(SpecFile file, String path) {
		TextLines lines = new TextLines(file);
		String statement = "import \"" + path + "\"" + lines.lineEnd();
		List<Import> imports = file.getImports();
		if (!imports.isEmpty()) {
			ICompositeNode last = NodeModelUtils.findActualNodeFor(imports.get(imports.size() - 1));
			int next = lines.startOfNextLine(last.getEndOffset());
			boolean ended = lines.between(last.getEndOffset(), next).endsWith("\n");
			return new TextEdit(next, 0, ended ? statement : lines.lineEnd() + statement);
		}
		EObject first = file.getDeclarations().isEmpty() ? null : file.getDeclarations().get(0);
		int offset = first == null ? 0 : lines.startWithComments(NodeModelUtils.findActualNodeFor(first).getOffset());
		return new TextEdit(offset, 0, statement + lines.lineEnd());
	}
}

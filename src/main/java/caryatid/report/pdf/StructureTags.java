package caryatid.report.pdf;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;

/** The logical structure of a document (ISO 32000-1, 14.7): what is read, and in which order. */
final class StructureTags {
  private final PDStructureTreeRoot root = new PDStructureTreeRoot();
  private final Deque<PDStructureNode> open = new ArrayDeque<>();
  private final List<COSArray> parentsOfPages = new ArrayList<>();

  StructureTags(PDDocument document) {
    document.getDocumentCatalog().setStructureTreeRoot(root);
    open.push(root);
    open("Document");
  }

  /** Opens an element of a standard type inside the one that is open. */
  PDStructureElement open(String type) {
    PDStructureElement element = new PDStructureElement(type, open.peek());
    open.getFirst().appendKid(element);
    open.push(element);
    return element;
  }

  void close() {
    open.pop();
  }

  void startPage(PDPage page) {
    page.setStructParents(parentsOfPages.size());
    page.getCOSObject().setName(COSName.getPDFName("Tabs"), "S");
    parentsOfPages.add(new COSArray());
  }

  /** Gives the next content of a page to the open element; the number that marks it. */
  int mark(PDPage page) {
    PDStructureElement element = (PDStructureElement) open.getFirst();
    COSArray parents = parentsOfPages.get(parentsOfPages.size() - 1);
    int number = parents.size();
    if (element.getPage() == null) {
      element.setPage(page);
    }
    element.appendKid(number);
    parents.add(element);
    return number;
  }

  COSName type() {
    return COSName.getPDFName(((PDStructureElement) open.getFirst()).getStructureType());
  }

  void finish() {
    PDNumberTreeNode tree = new PDNumberTreeNode(PDParentTreeValue.class);
    COSDictionary dictionary = tree.getCOSObject();
    COSArray numbers = new COSArray();
    for (int page = 0; page < parentsOfPages.size(); page++) {
      numbers.add(org.apache.pdfbox.cos.COSInteger.get(page));
      numbers.add(parentsOfPages.get(page));
    }
    dictionary.setItem(COSName.NUMS, numbers);
    root.setParentTree(tree);
    root.setParentTreeNextKey(parentsOfPages.size());
  }
}

package caryatid.recording.c3d;

import caryatid.recording.table.StageMessages;

/**
 * A file's sections.
 *
 * @param bytes all of it
 * @param parameters its parameters
 * @param layout where its samples are
 * @param processor whose order its bytes have
 * @param messages what was found on the way
 */
record C3dFile(
    C3dBytes bytes,
    C3dParameters parameters,
    DataLayout layout,
    Processor processor,
    StageMessages messages) {

  /** Reads header and parameters. */
  static C3dFile read(byte[] content, String file) throws C3dFault {
    if (content.length < 2 * C3dBytes.BLOCK) {
      throw C3dFault.damaged("byte " + content.length);
    }
    int start = ((content[0] & 0xff) - 1) * C3dBytes.BLOCK;
    if (start < C3dBytes.BLOCK || start + C3dBytes.BLOCK > content.length) {
      throw C3dFault.damaged("byte 0");
    }
    Processor processor =
        Processor.of(content[start + 3] & 0xff)
            .orElseThrow(() -> C3dFault.damaged("byte " + (start + 3)));
    C3dBytes bytes = new C3dBytes(content, processor);
    C3dParameters parameters = new ParameterSection(bytes, start).read();
    DataLayoutFinder finder = new DataLayoutFinder(bytes, parameters, file);
    DataLayout layout = finder.find();
    return new C3dFile(bytes, parameters, layout, processor, finder.messages());
  }
}

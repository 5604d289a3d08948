package caryatid.usecase;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.commons.ClassRemapper;
import org.objectweb.asm.commons.Remapper;

/**
 * The program as if every class, every component of a record and every constant of an enum had
 * another name, in all places where it is used. Only what reflection could see differs: names.
 */
final class Renamed extends ClassLoader {
  private static final String OURS = "caryatid/";
  private static final String COMMANDS = "caryatid/cli/";
  private static final String LATER = "Later";

  private final Map<String, Class<?>> found = new HashMap<>();

  Renamed() {
    super(Renamed.class.getClassLoader());
  }

  /** A class by the name it has in the code. */
  Class<?> of(Class<?> type) throws ClassNotFoundException {
    return loadClass(external(later(type.getName().replace('.', '/'))));
  }

  @Override
  protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
    synchronized (getClassLoadingLock(name)) {
      String before = before(name.replace('.', '/'));
      if (!before.startsWith(OURS)) {
        return super.loadClass(name, resolve);
      }
      Class<?> known = findLoadedClass(name);
      return known == null ? define(name, before) : known;
    }
  }

  private Class<?> define(String name, String before) throws ClassNotFoundException {
    try (InputStream in = getParent().getResourceAsStream(before + ".class")) {
      if (in == null) {
        throw new ClassNotFoundException(name);
      }
      ClassWriter writer = new ClassWriter(0);
      ClassRemapper renaming = new ClassRemapper(writer, new Names());
      new ClassReader(in).accept(new Texts(renaming, original(before)), 0);
      byte[] bytes = writer.toByteArray();
      return defineClass(name, bytes, 0, bytes.length);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Class<?> original(String internal) {
    return found.computeIfAbsent(
        internal,
        name -> {
          try {
            return Class.forName(external(name), false, getParent());
          } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
          }
        });
  }

  private static String external(String internal) {
    return internal.replace('/', '.');
  }

  /** Each part of a nested class's name has an end of its own; what javac numbers is left. */
  private static String later(String internal) {
    if (!ours(internal)) {
      return internal;
    }
    int end = internal.lastIndexOf('/') + 1;
    return internal.substring(0, end)
        + Arrays.stream(internal.substring(end).split("\\$"))
            .map(part -> Character.isDigit(part.charAt(0)) ? part : part + LATER)
            .collect(Collectors.joining("$"));
  }

  private static boolean ours(String internal) {
    return internal.startsWith(OURS) && !internal.startsWith(COMMANDS);
  }

  private static String before(String internal) {
    return ours(internal) ? internal.replaceAll(LATER + "(?=$|\\$)", "") : internal;
  }

  private static boolean isConstant(Class<?> type, String field) {
    return type.isEnum()
        && Arrays.stream(type.getFields())
            .anyMatch(f -> f.isEnumConstant() && f.getName().equals(field));
  }

  /** A component whose accessor no interface asks for: that one keeps the interface's name. */
  private static boolean isComponent(Class<?> type, String name) {
    return type.isRecord()
        && Arrays.stream(type.getRecordComponents()).anyMatch(c -> c.getName().equals(name))
        && interfaces(type)
            .flatMap(i -> Arrays.stream(i.getDeclaredMethods()))
            .noneMatch(m -> m.getName().equals(name) && m.getParameterCount() == 0);
  }

  private static Stream<Class<?>> interfaces(Class<?> type) {
    return Arrays.stream(type.getInterfaces())
        .flatMap(i -> Stream.concat(Stream.of(i), interfaces(i)));
  }

  private final class Names extends Remapper {
    Names() {
      super(Opcodes.ASM9);
    }

    @Override
    public String map(String internalName) {
      return later(internalName);
    }

    @Override
    public String mapFieldName(String owner, String name, String descriptor) {
      return ours(owner)
              && (isConstant(original(owner), name) || isComponent(original(owner), name))
          ? name + LATER
          : name;
    }

    @Override
    public String mapMethodName(String owner, String name, String descriptor) {
      return ours(owner) && descriptor.startsWith("()") && isComponent(original(owner), name)
          ? name + LATER
          : name;
    }

    @Override
    public String mapRecordComponentName(String owner, String name, String descriptor) {
      return mapFieldName(owner, name, descriptor);
    }
  }

  /** The names that the compiler also writes as texts: of constants, and for toString. */
  private static final class Texts extends ClassVisitor {
    private final Class<?> of;

    Texts(ClassVisitor next, Class<?> of) {
      super(Opcodes.ASM9, next);
      this.of = of;
    }

    @Override
    public MethodVisitor visitMethod(
        int access, String name, String descriptor, String signature, String[] exceptions) {
      MethodVisitor next = super.visitMethod(access, name, descriptor, signature, exceptions);
      return new MethodVisitor(Opcodes.ASM9, next) {
        private String made = "";

        @Override
        public void visitTypeInsn(int opcode, String type) {
          made = opcode == Opcodes.NEW ? type : "";
          super.visitTypeInsn(opcode, type);
        }

        /** A constant is made with its name first: new, dup, name. */
        @Override
        public void visitLdcInsn(Object value) {
          boolean constant =
              value instanceof String text
                  && name.equals("<clinit>")
                  && made.startsWith(of.getName().replace('.', '/'))
                  && ours(made)
                  && isConstant(of, text);
          made = "";
          super.visitLdcInsn(constant ? value + LATER : value);
        }

        @Override
        public void visitInvokeDynamicInsn(
            String method, String type, Handle bootstrap, Object... arguments) {
          boolean ofRecord = bootstrap.getOwner().equals("java/lang/runtime/ObjectMethods");
          super.visitInvokeDynamicInsn(
              method, type, bootstrap, ofRecord ? components(arguments) : arguments);
        }
      };
    }

    private Object[] components(Object[] arguments) {
      Object[] later = arguments.clone();
      later[1] =
          Arrays.stream(((String) arguments[1]).split(";"))
              .map(name -> isComponent(of, name) ? name + LATER : name)
              .collect(Collectors.joining(";"));
      return later;
    }
  }
}

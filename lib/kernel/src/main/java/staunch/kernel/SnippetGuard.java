package staunch.kernel;

import java.util.HashSet;
import java.util.Set;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * Rewrites the bytecode of cells: every loop looks once per turn whether the cell was interrupted, and ending the JVM
 * becomes an error of the cell.
 */
final class SnippetGuard {
    private static final String GUARDS = Type.getInternalName(CellGuards.class);

    private SnippetGuard() {}

    static byte[] guard(byte[] compiled) {
        ClassReader reader = new ClassReader(compiled);
        ClassWriter writer = new ClassWriter(reader, 0);
        reader.accept(
                new ClassVisitor(Opcodes.ASM9, writer) {
                    @Override
                    public MethodVisitor visitMethod(
                            int access, String name, String descriptor, String signature, String[] exceptions) {
                        return new Guard(super.visitMethod(access, name, descriptor, signature, exceptions));
                    }
                },
                0);
        return writer.toByteArray();
    }

    private static final class Guard extends MethodVisitor {
        private final Set<Label> passed = new HashSet<>();

        Guard(MethodVisitor next) {
            super(Opcodes.ASM9, next);
        }

        @Override
        public void visitLabel(Label label) {
            passed.add(label);
            super.visitLabel(label);
        }

        @Override
        public void visitJumpInsn(int opcode, Label target) {
            if (passed.contains(target)) {
                super.visitMethodInsn(Opcodes.INVOKESTATIC, GUARDS, "checkpoint", "()V", false);
            }
            super.visitJumpInsn(opcode, target);
        }

        @Override
        public void visitMethodInsn(int opcode, String owner, String name, String descriptor, boolean isInterface) {
            if (owner.equals("java/lang/System") && name.equals("exit")) {
                super.visitMethodInsn(Opcodes.INVOKESTATIC, GUARDS, "exit", "(I)V", false);
            } else if (owner.equals("java/lang/Runtime") && (name.equals("exit") || name.equals("halt"))) {
                super.visitMethodInsn(Opcodes.INVOKESTATIC, GUARDS, "exit", "(Ljava/lang/Runtime;I)V", false);
            } else {
                super.visitMethodInsn(opcode, owner, name, descriptor, isInterface);
            }
        }
    }
}

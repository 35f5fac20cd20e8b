/** Hands a headless command to its module, which is loaded only when asked for. */
import { unknownCommand } from '../words/en/commands';
import type { CommandIo, CommandModule } from './command';

const modules = import.meta.glob<CommandModule>('./*-command.ts');
const pathOf = (name: string): string => `./${name}-command.ts`;
const names = Object.keys(modules).map((path) => path.replace(/^\.\/(.+)-command\.ts$/, '$1'));

export async function main([name = '', ...args]: readonly string[], io: CommandIo): Promise<number> {
  const load = modules[pathOf(name)];
  if (!load) {
    io.err(`${unknownCommand(name, names)}\n`);
    return 2;
  }
  return (await load()).run(args, io);
}

import { Body, Controller, type Type } from '@nestjs/common';
import { EVERYONE } from '../../platform/auth/actor.js';
import { ComputeRoute } from '../../platform/http/api.js';
import type { Calculation } from './calculation.js';

/** The controller of one calculation: its route, permission, check and documentation, all from its definition. */
export function controllerOf(definition: Calculation): Type {
  const { name, title, description, input, output, run, roles } = definition;

  class CalculationController {
    compute(body: object): object {
      return run(body);
    }
  }
  const { prototype } = CalculationController;
  const method = Object.getOwnPropertyDescriptor(prototype, 'compute');
  if (method === undefined) throw new Error('the method is there');
  // What the compiler would have written for a class of its own: the pipe finds the body's class in the metadata.
  Reflect.defineMetadata('design:paramtypes', [input], prototype, 'compute');
  Body()(prototype, 'compute', 0);
  ComputeRoute(input, output, { path: name, roles: roles ?? EVERYONE, summary: title, description })(prototype, 'compute', method);
  Object.defineProperty(CalculationController, 'name', { value: `${name.replace(/(^|-)(\w)/g, (_, __, letter: string) => letter.toUpperCase())}Controller` });
  Controller('v1/calculations')(CalculationController);
  return CalculationController;
}

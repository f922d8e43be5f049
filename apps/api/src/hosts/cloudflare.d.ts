/** What is used of the Workers runtime's own module: the variables and bindings of the Worker, known when it loads. */
declare module "cloudflare:workers" {
  export const env: Readonly<Record<string, unknown>>;
}
